// The line that proves true size: laid beside a ruler it is 50 mm, or the printer has scaled the page.
import { FINE_MM, INK } from './ink.ts';
import { group, line, text } from './nodes.ts';
import type { Group } from './scene.ts';

/** From the middle of one end tick to the middle of the other. */
export const CHECK_LINE_MM = 50;
const TICK_MM = 4;
const LABEL_EM_MM = 3.3;

/** Room that the line takes in mm, its label below counted in height only: a label may be wider. */
export const CHECK_LINE_SIZE = { widthMm: CHECK_LINE_MM + FINE_MM, heightMm: TICK_MM + 6 } as const;

/** The line with its top left corner at (left, top), the label, where there is one, below it. */
export function checkLine(left: number, top: number, label: string): Group {
  const [from, to] = [left + FINE_MM / 2, left + FINE_MM / 2 + CHECK_LINE_MM];
  const middle = top + TICK_MM / 2;
  const stroke = { colour: INK, widthMm: FINE_MM, ends: 'square' } as const;
  return group('check-line', [
    line(from, middle, to, middle, stroke),
    line(from, top, from, top + TICK_MM, stroke),
    line(to, top, to, top + TICK_MM, stroke),
    ...(label === '' ? [] : [text(label, left, top + TICK_MM + 4.5, LABEL_EM_MM)]),
  ]);
}
