// The signs as lines to be drawn with a thick pen, round at ends and corners.
import {
  circlePath,
  linePath,
  type Path,
  type PathStep,
  polygonPath,
  rectanglePath,
  transformPath,
  turnBy,
} from '../base/index.ts';
import type { Sign } from './form-names.ts';

/** Width of the pen that draws signs, in cell sides. */
export const SIGN_WIDTH_SHARE = 0.12;

/** Radius of the dot, in cell sides: the one sign that is filled and not drawn. */
const DOT_RADIUS = 0.2;

const SIGN_PATHS: Readonly<Record<Sign, Path>> = {
  'sign-dot': circlePath(0, 0, DOT_RADIUS),
  'sign-upright-line': bar(0, -0.4, 0, 0.4),
  'sign-level-line': bar(-0.4, 0, 0.4, 0),
  'sign-ring': circlePath(0, 0, 0.35),
  'sign-plus': [...bar(0, -0.4, 0, 0.4), ...bar(-0.4, 0, 0.4, 0)],
  'sign-oblique-cross': [...oblique(45), ...oblique(-45)],
  'sign-wave': wave(),
  'sign-tick': linePath([
    { x: -0.33, y: 0.02 },
    { x: -0.1, y: 0.27 },
    { x: 0.34, y: -0.27 },
  ]),
  'sign-square': rectanglePath(-0.3, -0.3, 0.6, 0.6),
  'sign-triangle': polygonPath([
    { x: 0, y: -0.4 },
    { x: 0.34, y: 0.25 },
    { x: -0.34, y: 0.25 },
  ]),
};

/** The lines of a sign in a cell of side 1 about (0, 0); only the dot is to be filled. */
export function signPath(sign: Sign): { path: Path; filled: boolean } {
  return { path: SIGN_PATHS[sign], filled: sign === 'sign-dot' };
}

function bar(x1: number, y1: number, x2: number, y2: number): Path {
  return linePath([
    { x: x1, y: y1 },
    { x: x2, y: y2 },
  ]);
}

/** The upright line turned, so that the oblique cross is the plus turned. */
function oblique(turnDeg: number): Path {
  return transformPath(bar(0, -0.4, 0, 0.4), turnBy(turnDeg));
}

/** Two full swings from left to right. */
function wave(): Path {
  const [left, step, height] = [-0.4, 0.2, 0.24];
  const swings = [0, 1, 2, 3].map((index): PathStep => {
    const [from, tilt] = [left + index * step, index % 2 === 0 ? -height : height];
    return ['C', from + step * 0.4, tilt, from + step * 0.6, tilt, from + step, 0];
  });
  return [['M', left, 0], ...swings];
}
