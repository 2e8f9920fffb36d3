// Paths: outlines of straight lines and cubic curves, in any unit; y points down the page.

export type PathStep =
  | readonly ['M', number, number]
  | readonly ['L', number, number]
  | readonly ['C', number, number, number, number, number, number]
  | readonly ['Z'];

export type Path = readonly PathStep[];

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Bounds {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Affine map `[a b c d e f]`: x' = a·x + c·y + e, y' = b·x + d·y + f (the order of SVG and PDF). */
export type Transform = readonly [number, number, number, number, number, number];

export const IDENTITY: Transform = [1, 0, 0, 1, 0, 0];

/** `outer` after `inner`. By their places: to take a list apart makes an object for each number, many times a page. */
export function compose(outer: Transform, inner: Transform): Transform {
  return [
    outer[0] * inner[0] + outer[2] * inner[1],
    outer[1] * inner[0] + outer[3] * inner[1],
    outer[0] * inner[2] + outer[2] * inner[3],
    outer[1] * inner[2] + outer[3] * inner[3],
    outer[0] * inner[4] + outer[2] * inner[5] + outer[4],
    outer[1] * inner[4] + outer[3] * inner[5] + outer[5],
  ];
}

export function moveBy(dx: number, dy: number): Transform {
  return [1, 0, 0, 1, dx, dy];
}

export function scaleBy(sx: number, sy = sx): Transform {
  return [sx, 0, 0, sy, 0, 0];
}

/** Turn clockwise on the page (y down) about the origin, in degrees; quarter turns are exact. */
export function turnBy(turnDeg: number): Transform {
  const quarter = (((turnDeg / 90) % 4) + 4) % 4;
  const radians = (turnDeg * Math.PI) / 180;
  const cos = quarter % 1 === 0 ? ([1, 0, -1, 0][quarter] as number) : Math.cos(radians);
  const sin = quarter % 1 === 0 ? ([0, 1, 0, -1][quarter] as number) : Math.sin(radians);
  return [cos, sin, -sin, cos, 0, 0];
}

export function transformPoint([a, b, c, d, e, f]: Transform, x: number, y: number): Point {
  return { x: a * x + c * y + e, y: b * x + d * y + f };
}

export function transformPath(path: Path, transform: Transform): Path {
  const at = (x: number, y: number): [number, number] => {
    const point = transformPoint(transform, x, y);
    return [point.x, point.y];
  };
  return path.map((step): PathStep => {
    if (step[0] === 'Z') return step;
    if (step[0] === 'C') {
      return ['C', ...at(step[1], step[2]), ...at(step[3], step[4]), ...at(step[5], step[6])];
    }
    return [step[0], ...at(step[1], step[2])];
  });
}

/** The path's subpaths as polygons; a curve becomes `segments` straight pieces. */
export function flattenPath(path: Path, segments = 16): readonly (readonly Point[])[] {
  const polygons: Point[][] = [];
  let current: Point[] = [];
  for (const step of path) {
    if (step[0] === 'M') {
      current = [{ x: step[1], y: step[2] }];
      polygons.push(current);
    } else if (step[0] === 'L') current.push({ x: step[1], y: step[2] });
    else if (step[0] === 'C')
      current.push(...curvePoints(current[current.length - 1], step, segments));
  }
  return polygons;
}

function curvePoints(
  start: Point | undefined,
  [, x1, y1, x2, y2, x3, y3]: Extract<PathStep, readonly ['C', ...number[]]>,
  segments: number,
): Point[] {
  if (!start) throw new Error('path: a curve needs a point before it');
  return Array.from({ length: segments }, (_, index) => {
    const t = (index + 1) / segments;
    const u = 1 - t;
    const [p, q, r, s] = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t];
    return { x: p * start.x + q * x1 + r * x2 + s * x3, y: p * start.y + q * y1 + r * y2 + s * y3 };
  });
}

/** The smallest upright rectangle round the path (curves measured on their flattened form). */
export function pathBounds(path: Path): Bounds {
  const points = flattenPath(path).flat();
  return {
    left: Math.min(...points.map((point) => point.x)),
    top: Math.min(...points.map((point) => point.y)),
    right: Math.max(...points.map((point) => point.x)),
    bottom: Math.max(...points.map((point) => point.y)),
  };
}

/** The smallest upright rectangle round all of them; of none, one without an inside: its left is right of its right. */
export function unionOf(all: readonly Bounds[]): Bounds {
  return {
    left: Math.min(...all.map(({ left }) => left)),
    top: Math.min(...all.map(({ top }) => top)),
    right: Math.max(...all.map(({ right }) => right)),
    bottom: Math.max(...all.map(({ bottom }) => bottom)),
  };
}
