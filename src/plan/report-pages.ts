// The one or two pages of a report, the same on every machine.
import {
  type Area,
  type Block,
  fitText,
  group,
  INK,
  type Page,
  type Pages,
  pageIn,
  pageSize,
  printArea,
  QUIET_INK,
  type SceneNode,
  stackBlocks,
  text,
} from '../page/index.ts';
import type { Report } from './report.ts';
import { reportBlocks, type Shown } from './report-blocks.ts';
import { printableReport } from './report-printable.ts';

const MOST_PAGES = 2;
/** More than two pages can hold. */
const MOST_NOTES = 100;
const FOOT_MM = 8;
const FOOT_EM_MM = 2.9;
/** Room for the number of the page. */
const FOOT_NUMBER_MM = 15;

/** The report on upright paper of its kind: two pages at most, with as many pairs and notes as they have room for. */
export function reportPages(given: Report): Pages {
  const report = printableReport(given);
  const area = printArea(report.paper, 'portrait');
  const body = { ...area, height: area.height - FOOT_MM };
  const stacks = stacksOf(report, body);
  const size = pageSize(report.paper, 'portrait');
  // One page alone needs no number.
  const numberOf = (place: number) =>
    stacks.length === 1 ? [] : report.pages.slice(place, place + 1);
  const pages = stacks.map(
    (stack, place): Page =>
      pageIn(given.language, {
        ...size,
        title: [given.title, ...numberOf(place)].join(', '),
        nodes: [stack, footOf(report.foot, numberOf(place), area)],
      }),
  );
  return { title: given.title, language: given.language, pages };
}

/** The blocks page by page, with as many rows and then as many notes as two pages hold. */
function stacksOf(report: Report, body: Area): readonly SceneNode[] {
  const stacksWith = (shown: Shown) => stacked(reportBlocks(report, shown, body.width), body);
  const fits = (shown: Shown) => stacksWith(shown).length <= MOST_PAGES;
  const rowsThere = Math.max(0, ...report.parts.map(({ rows }) => rows?.items.length ?? 0));
  const notesThere = Math.min(MOST_NOTES, report.notes?.items.length ?? 0);
  const rows = most(rowsThere, (rows) => fits({ rows, notes: 0 }));
  const notes = most(notesThere, (notes) => fits({ rows, notes }));
  return stacksWith({ rows, notes });
}

/** The greatest count up to `limit` that fits, found by halving; none is taken to fit always. */
function most(limit: number, fits: (count: number) => boolean): number {
  let [good, bad] = [0, limit + 1];
  while (bad - good > 1) {
    const middle = Math.floor((good + bad) / 2);
    if (fits(middle)) good = middle;
    else bad = middle;
  }
  return good;
}

function stacked(blocks: readonly Block[], body: Area): readonly SceneNode[] {
  const stacks: SceneNode[] = [];
  let rest = blocks;
  while (rest.length > 0) {
    const stack = stackBlocks(rest, body);
    stacks.push(stack.group);
    rest = stack.rest;
  }
  return stacks;
}

function footOf(
  words: string,
  numbers: readonly string[],
  { left, top, width, height }: Area,
): SceneNode {
  const baseline = top + height - 1;
  return group('foot', [
    text(fitText(words, width - FOOT_NUMBER_MM, FOOT_EM_MM), left, baseline, FOOT_EM_MM, {
      colour: QUIET_INK,
    }),
    ...numbers.map((number) =>
      text(number, left + width, baseline, FOOT_EM_MM, { anchor: 'end', colour: INK }),
    ),
  ]);
}
