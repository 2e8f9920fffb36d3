// The small sign that stands where something is to be cut: scissors, drawn as an outline.
import { circlePath, linePath, moveBy } from '../base/index.ts';
import { QUIET_INK } from './ink.ts';
import { filled, group, stroked } from './nodes.ts';
import type { Group } from './scene.ts';

/** Of the sign, in mm. */
export const SCISSORS_SIZE = { widthMm: 7, heightMm: 4.4 } as const;

const LINE = { colour: QUIET_INK, widthMm: 0.35 } as const;
const HANDLE_RADIUS_MM = 1.05;

/** Two rings, two blades that cross in a rivet; from its top left corner, the blades to the right. */
export function scissorsSign(left: number, top: number): Group {
  const blade = (fromY: number, toY: number) =>
    stroked(
      linePath([
        { x: 2.1, y: fromY },
        { x: SCISSORS_SIZE.widthMm - 0.2, y: toY },
      ]),
      LINE,
    );
  return {
    ...group('scissors', [
      stroked(circlePath(1.25, 1.25, HANDLE_RADIUS_MM), LINE),
      stroked(circlePath(1.25, 3.15, HANDLE_RADIUS_MM), LINE),
      blade(1.6, 3.4),
      blade(2.8, 1),
      filled(circlePath(3.75, 2.2, 0.3), QUIET_INK),
    ]),
    transform: moveBy(left, top),
  };
}
