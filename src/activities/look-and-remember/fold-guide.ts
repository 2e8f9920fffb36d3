// The small drawing for the adult: the upper half goes back along the dashed line, then the lower half alone is shown.
import {
  circlePath,
  linePath,
  moveBy,
  type Path,
  polygonPath,
  rectanglePath,
} from '../../base/index.ts';
import {
  FAINT_INK,
  FINE_MM,
  filled,
  type Group,
  group,
  INK,
  line,
  QUIET_INK,
  type SceneNode,
  stroked,
  WHITE,
} from '../../page/index.ts';
import type { Size } from '../activity.ts';

export const FOLD_GUIDE_SIZE: Size = { widthMm: 30.2, heightMm: 15.4 };

/** Of the small paper, in mm. */
const [WIDE_MM, HIGH_MM] = [10.6, 15];
const EDGE = { colour: INK, widthMm: FINE_MM } as const;
const THIN = { colour: QUIET_INK, widthMm: FINE_MM } as const;
/** Where the second paper stands, and how far what is behind it looks out at its sides, in the drawing alone. */
const SECOND_MM = 19;
const BEHIND_MM = 1.1;

/** The paper before it is folded, an arrow round its edge to the back, and the paper as the child then has it. */
export function foldGuide(): Group {
  const half = HIGH_MM / 2;
  const drawn = group('fold-guide', [
    paper(0, 0.2, HIGH_MM),
    ...[2.6, 5.3, 8].map((x) => filled(circlePath(x, 4, 0.9), FAINT_INK)),
    line(0.2, half + 0.2, WIDE_MM - 0.2, half + 0.2, { ...THIN, dashMm: [1, 0.8] }),
    ...choicesAt(0, half + 0.2),
    ...arrowBack(WIDE_MM + 1.2, 3.6, HIGH_MM - 3.4),
    behind(half + 0.2),
    paper(SECOND_MM, half + 0.2, half),
    ...choicesAt(SECOND_MM, half + 0.2),
  ]);
  // Half a line to the right, so that none of it is cut off.
  return { ...drawn, transform: moveBy(FINE_MM, 0) };
}

function paper(left: number, top: number, heightMm: number): SceneNode {
  return filled(rectanglePath(left, top, WIDE_MM, heightMm, 0), WHITE, EDGE);
}

function choicesAt(left: number, top: number): readonly SceneNode[] {
  return [3.4, 7.2].map((x) => stroked(circlePath(left + x, top + 3.8, 1), THIN));
}

/** The folded half, a little wider than what lies before it, so that it can be seen to be there. */
function behind(top: number): SceneNode {
  const [left, right] = [SECOND_MM, SECOND_MM + WIDE_MM];
  const corners = [
    { x: left, y: top },
    { x: right, y: top },
    { x: right - BEHIND_MM, y: top - 1.6 },
    { x: left + BEHIND_MM, y: top - 1.6 },
  ];
  return filled(polygonPath(corners), FAINT_INK, EDGE);
}

/** Out from the upper half, round the edge and in behind the lower one. */
function arrowBack(x: number, from: number, to: number): readonly SceneNode[] {
  const bow = 5;
  const path: Path = [
    ['M', x, from],
    ['C', x + bow, from + 1, x + bow, to - 1, x, to],
  ];
  const tip = linePath([
    { x: x + 1.9, y: to - 1.5 },
    { x, y: to },
    { x: x + 2.3, y: to + 0.9 },
  ]);
  return [stroked(path, THIN), stroked(tip, THIN)];
}
