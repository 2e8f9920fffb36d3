// The name of a saved pack: says what is in it, and is safe on every file system.
import type { Entries } from '../recipe/entries.ts';

/** `in-every-box-step-3-10-sheets-A4-418.pdf`; the number is the seed. */
export function pdfName({ activity, step, sheets, paper, seed }: Entries): string {
  const count = `${sheets}-sheet${sheets === 1 ? '' : 's'}`;
  return `${[activity, `step-${step}`, count, paper, seed].join('-')}.pdf`.replaceAll(
    /[^\w.-]+/g,
    '-',
  );
}
