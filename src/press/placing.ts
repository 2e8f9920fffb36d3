// Paths as they come to lie on the page, as text of SVG or of PDF.
import type { Path, PathStep, Transform } from '../base/index.ts';
import { hundredthsOf, hundredthsText } from './numbers.ts';
import type { Operators } from './operators.ts';

const PDF_OPERATORS = { M: 'm ', L: 'l ', C: 'c ', Z: 'h ' } as const;

/** The path in hundredths of a mm of the page, in the operators of PDF (ISO 32000, 8.5.2). */
export function writePdfPath(path: Path, [a, b, c, d, e, f]: Transform, to: Operators): void {
  for (const step of path) {
    for (let index = 1; index < step.length; index += 2) {
      const [x, y] = [step[index] as number, step[index + 1] as number];
      to.whole(hundredthsOf(a * x + c * y + e));
      to.whole(hundredthsOf(b * x + d * y + f));
    }
    to.text(PDF_OPERATORS[step[0]]);
  }
}

/**
 * The path in mm of the page, in the letters of SVG (SVG 1.1, 8.3). Each step counts from the rounded
 * end of the one before it, so that roundings do not add up.
 */
export function svgPath(path: Path, transform: Transform): string {
  let [x, y, startX, startY] = [0, 0, 0, 0];
  let written = '';
  for (const step of path) {
    const isMove = step[0] === 'M';
    const ends = placed(step, transform);
    written += isMove ? 'M' : step[0].toLowerCase();
    written += steps(ends, isMove ? 0 : x, isMove ? 0 : y);
    [x, y] = step[0] === 'Z' ? [startX, startY] : [ends.at(-2) ?? x, ends.at(-1) ?? y];
    if (isMove) [startX, startY] = [x, y];
  }
  return written;
}

/** The ends counted from (x, y); a minus parts two numbers as well as a space does. */
function steps(ends: readonly number[], x: number, y: number): string {
  return ends
    .map((end, index) => hundredthsText(end - (index % 2 === 0 ? x : y)))
    .join(' ')
    .replaceAll(' -', '-');
}

/** The points of a step in hundredths of a mm of the page: x, y, x, y … */
function placed([, ...lengths]: PathStep, [a, b, c, d, e, f]: Transform): number[] {
  const ends: number[] = [];
  for (let index = 0; index < lengths.length; index += 2) {
    const [x = 0, y = 0] = [lengths[index], lengths[index + 1]];
    ends.push(hundredthsOf(a * x + c * y + e), hundredthsOf(b * x + d * y + f));
  }
  return ends;
}

/** How much a transform widens a line: the root of the area that it makes of a unit square. */
export function scaleOf([a, b, c, d]: Transform): number {
  return Math.sqrt(Math.abs(a * d - b * c));
}
