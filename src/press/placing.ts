// Paths as they come to lie on the page, as text of SVG or of PDF.
import type { Path, Transform } from '../base/index.ts';
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
export function svgPath(path: Path, [a, b, c, d, e, f]: Transform): string {
  let [fromX, fromY, startX, startY] = [0, 0, 0, 0];
  let written = '';
  for (const step of path) {
    const isMove = step[0] === 'M';
    if (isMove) fromX = fromY = 0;
    let [endX, endY] = [startX, startY];
    written += SVG_LETTERS[step[0]];
    for (let index = 1; index < step.length; index += 2) {
      const x = step[index] as number;
      const y = step[index + 1] as number;
      endX = hundredthsOf(a * x + c * y + e);
      endY = hundredthsOf(b * x + d * y + f);
      if (index > 1) written += parting(endX - fromX);
      written +=
        hundredthsText(endX - fromX) + parting(endY - fromY) + hundredthsText(endY - fromY);
    }
    [fromX, fromY] = [endX, endY];
    if (isMove) [startX, startY] = [endX, endY];
  }
  return written;
}

const SVG_LETTERS = { M: 'M', L: 'l', C: 'c', Z: 'z' } as const;

/** What stands before a number that follows another: a minus parts them as well as a space does. */
function parting(hundredths: number): string {
  return hundredths < 0 ? '' : ' ';
}

/** How much a transform widens a line: the root of the area that it makes of a unit square. */
export function scaleOf(transform: Transform): number {
  return Math.sqrt(Math.abs(transform[0] * transform[3] - transform[1] * transform[2]));
}
