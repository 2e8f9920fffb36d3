// The sixteen shapes as closed outlines, each about its own middle and upright.
import {
  circlePath,
  ellipsePath,
  flattenPath,
  type Path,
  type Point,
  polygonPath,
  rectanglePath,
  scaleBy,
  transformPath,
  turnBy,
} from '../base/index.ts';
import { arcSteps, onCircle } from './arcs.ts';
import type { Shape } from './form-names.ts';

/**
 * How far each shape reaches from the middle of its cell, in cell sides; at most 0.5, so that it stays
 * inside at every turn. Full shapes reach less far and pointed ones further, so that none looks small.
 * Common practice, no source; judged by eye.
 */
const SHAPES_IN_CELLS: Readonly<Record<Shape, { path: Path; reach: number }>> = {
  circle: { path: circlePath(0, 0, 1), reach: 0.43 },
  oval: { path: ellipsePath(0, 0, 1, 0.62), reach: 0.49 },
  square: { path: rectanglePath(-1, -1, 2, 2), reach: 0.495 },
  oblong: { path: rectanglePath(-1, -0.55, 2, 1.1), reach: 0.5 },
  triangle: { path: polygonPath(at([0, -50], [40, 30], [-40, 30])), reach: 0.5 },
  diamond: { path: polygonPath(at([0, -3], [2, 0], [0, 3], [-2, 0])), reach: 0.5 },
  heart: { path: heart(), reach: 0.49 },
  star: { path: star(5, 0.46), reach: 0.5 },
  crescent: { path: crescent(), reach: 0.5 },
  cross: { path: cross(0.36), reach: 0.495 },
  arrow: { path: arrow(), reach: 0.5 },
  drop: { path: drop(), reach: 0.5 },
  'half-circle': { path: halfCircle(), reach: 0.5 },
  pentagon: { path: regular(5), reach: 0.48 },
  hexagon: { path: regular(6), reach: 0.46 },
  leaf: { path: leaf(), reach: 0.5 },
};

/** The outline of a shape in a cell of side 1 about (0, 0). */
export function shapeOutline(shape: Shape): Path {
  const { path, reach } = SHAPES_IN_CELLS[shape];
  const furthest = Math.max(...flattenPath(path, 64).flat().map(distanceFromMiddle));
  return transformPath(path, scaleBy(reach / furthest));
}

function distanceFromMiddle({ x, y }: Point): number {
  return Math.sqrt(x * x + y * y);
}

function at(...pairs: readonly (readonly [number, number])[]): readonly Point[] {
  return pairs.map(([x, y]) => ({ x, y }));
}

/** Corners on a circle, one of them at the top where the count is odd, two where it is even. */
function regular(corners: number): Path {
  const first = corners % 2 === 1 ? -90 : -90 + 180 / corners;
  return polygonPath(
    Array.from({ length: corners }, (_, index) =>
      onCircle(0, 0, 1, first + (index * 360) / corners),
    ),
  );
}

/** Points on a circle of radius 1 and notches on one of radius `inner`, fuller than a drawn pentagram. */
function star(points: number, inner: number): Path {
  return polygonPath(
    Array.from({ length: 2 * points }, (_, index) =>
      onCircle(0, 0, index % 2 === 0 ? 1 : inner, -90 + (index * 180) / points),
    ),
  );
}

/** Two bars of length 2 crossing at right angles, `half` wide to each side. */
function cross(half: number): Path {
  const quarter = at([half, -1], [half, -half], [1, -half]);
  const turns = [0, 90, 180, 270];
  return polygonPath(
    turns.flatMap((turnDeg) => {
      const turned = transformPath(polygonPath(quarter), turnBy(turnDeg));
      return flattenPath(turned).flat();
    }),
  );
}

/** Pointing up: a wide head on a thick shaft. */
function arrow(): Path {
  return polygonPath(at([0, -50], [43, -6], [17, -6], [17, 47], [-17, 47], [-17, -6], [-43, -6]));
}

function heart(): Path {
  return [
    ['M', 0, -24],
    ['C', 7, -36, 16, -42, 26, -42],
    ['C', 38, -42, 47, -32, 47, -19],
    ['C', 47, 4, 22, 24, 0, 47],
    ['C', -22, 24, -47, 4, -47, -19],
    ['C', -47, -32, -38, -42, -26, -42],
    ['C', -16, -42, -7, -36, 0, -24],
    ['Z'],
  ];
}

/** A point at the top, a round belly below. */
function drop(): Path {
  return [
    ['M', 0, -50],
    ['C', 4, -34, 32, -8, 32, 18],
    ...arcSteps(0, 18, 32, 0, 180),
    ['C', -32, -8, -4, -34, 0, -50],
    ['Z'],
  ];
}

/** A dome on a flat side, its middle halfway up. */
function halfCircle(): Path {
  return [['M', -1, 0.5], ...arcSteps(0, 0.5, 1, 180, 180), ['Z']];
}

/** A thick moon, open to the right: a disc of radius 50 less one of radius 40 that stands 27 to the right. */
function crescent(): Path {
  const [outer, inner, apart, shift] = [50, 40, 27, 4];
  const tipX = (apart * apart + outer * outer - inner * inner) / (2 * apart);
  const tipY = Math.sqrt(outer * outer - tipX * tipX);
  const outerDeg = degreesOf(tipX, tipY);
  const innerDeg = degreesOf(tipX - apart, tipY);
  return [
    ['M', tipX + shift, tipY],
    ...arcSteps(shift, 0, outer, outerDeg, 360 - 2 * outerDeg),
    ...arcSteps(shift + apart, 0, inner, -innerDeg, 2 * innerDeg - 360),
    ['Z'],
  ];
}

function degreesOf(x: number, y: number): number {
  return (Math.atan2(y, x) * 180) / Math.PI;
}

/** Two arcs that meet in points, on a short stalk, leaning to the upper right. */
function leaf(): Path {
  const [tip, foot, stalk, half] = [-50, 36, 50, 4.5];
  const radius = 49;
  const middle = (tip + foot) / 2;
  const aside = Math.sqrt(radius * radius - (foot - middle) ** 2);
  const stalkDeg = degreesOf(half + aside, Math.sqrt(radius * radius - (half + aside) ** 2));
  const tipDeg = degreesOf(aside, tip - middle);
  const joint = onCircle(-aside, middle, radius, stalkDeg);
  const upright: Path = [
    ['M', 0, tip],
    ...arcSteps(-aside, middle, radius, tipDeg, stalkDeg - tipDeg),
    ['L', half, stalk],
    ['L', -half, stalk],
    ['L', -joint.x, joint.y],
    ...arcSteps(aside, middle, radius, 180 - stalkDeg, stalkDeg - tipDeg),
    ['Z'],
  ];
  return transformPath(upright, turnBy(45));
}
