// Reads the outlines in the generated tables: short text of moves, lines and curves.
import type { Path, PathStep } from '../base/index.ts';

/**
 * Reads `M x y`, `L x y`, `Q x y x y`, `C x y x y x y` and `Z`, every x divided by `unitsX` and y by `unitsY`;
 * quadratic curves become cubic ones. A defect on anything else.
 */
export function pathFromText(outline: string, unitsX: number, unitsY: number): Path {
  const steps: PathStep[] = [];
  let [x, y] = [0, 0];
  for (const [step, letter, rest] of outline.matchAll(/([A-Z])([^A-Z]*)/g)) {
    const units = (rest ?? '').split(' ').map(Number);
    const [x1 = 0, y1 = 0, x2 = 0, y2 = 0, x3 = 0, y3 = 0] = units.map(
      (unit, index) => unit / (index % 2 === 0 ? unitsX : unitsY),
    );
    if (letter === 'Z') steps.push(['Z']);
    else if (letter === 'Q') steps.push(cubicFromQuadratic(x, y, x1, y1, x2, y2));
    else if (letter === 'C') steps.push(['C', x1, y1, x2, y2, x3, y3]);
    else if (letter === 'M' || letter === 'L') steps.push([letter, x1, y1]);
    else throw new Error(`figures › outline: expected M, L, Q, C or Z, got ${step}`);
    [x, y] = letter === 'C' ? [x3, y3] : letter === 'Q' ? [x2, y2] : [x1, y1];
  }
  return steps;
}

/** Degree elevation: the same curve, exactly. */
function cubicFromQuadratic(
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  x2: number,
  y2: number,
): PathStep {
  const third = (near: number, control: number) => near + (2 / 3) * (control - near);
  return ['C', third(x0, x1), third(y0, y1), third(x2, x1), third(y2, y1), x2, y2];
}
