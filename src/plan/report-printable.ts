// A report with all its words as the page's font can print them, and a line that says so where some cannot.
import { printable } from '../page/index.ts';
import type { Report } from './report.ts';

export function printableReport(report: Report): Report {
  let isWhole = true;
  const printed = eachText(report, (words) => {
    const line = printable(words);
    isWhole &&= line.isWhole;
    return line.words;
  }) as Report;
  return isWhole ? printed : { ...printed, opening: [...printed.opening, report.lacking] };
}

/** Plain data with another text in place of each. */
function eachText(value: unknown, change: (text: string) => string): unknown {
  if (typeof value === 'string') return change(value);
  if (Array.isArray(value)) return value.map((each) => eachText(each, change));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, each]) => [key, eachText(each, change)]),
  );
}
