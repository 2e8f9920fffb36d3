// What makes a tangle hard, measured from the printed outlines and those to choose from.
import { flattenPath, type Point } from '../../base/index.ts';
import { linePointsOf, outlineOf } from '../../figures/index.ts';
import type { Features } from '../features.ts';
import { areAlike } from '../figure-comparison.ts';
import { likenessFeatures } from '../figure-features.ts';
import { type Deed, handLevel } from '../hand.ts';
import type { Placed, Printed, Response } from './task.ts';

const DEEDS: Readonly<Record<Response, Deed>> = {
  point: 'point',
  ring: 'ring',
  'colour-in': 'colour-in',
};
/** Points along an outline for measuring, in cell sides. */
const SPACING = 0.09;

/** Straight pieces for each curve. */
const PIECES = 4;

export function features({ tangle, candidates, response = 'point' }: Printed): Features {
  const { likeness = 0, oblique = 0, mirrored = 0 } = likenessFeatures(candidates);
  const laid = tangle.map(laidOf);
  const found = tangle.filter(({ figure }) => candidates.some((one) => areAlike(one, figure)));
  return {
    compared: Math.log(candidates.length),
    answers: Math.log(Math.max(1, found.length)),
    crossings: Math.log(1 + crossingsIn(laid)),
    overlaid: overlaidShare(tangle, laid),
    likeness,
    mirrored,
    oblique,
    absence: found.length < candidates.length ? 1 : 0,
    hand: handLevel(DEEDS[response]),
  };
}

/** An outline in place, as polygons. */
type Laid = readonly (readonly Point[])[];

function laidOf({ figure, x, y }: Placed): Laid {
  return flattenPath(outlineOf(figure).path, PIECES).map((polygon) =>
    polygon.map((point) => ({ x: point.x + x, y: point.y + y })),
  );
}

/** The mean over the outlines of the share of their lines that lies inside another outline. */
function overlaidShare(tangle: readonly Placed[], laid: readonly Laid[]): number {
  const shares = tangle.map(({ figure, x, y }, index) => {
    const points = linePointsOf(figure, SPACING);
    const inside = points.filter((point) => {
      const at = { x: point.x + x, y: point.y + y };
      return laid.some((other, place) => place !== index && isInside(at, other));
    });
    return inside.length / points.length;
  });
  return shares.reduce((sum, share) => sum + share, 0) / shares.length;
}

/** By the number of lines to the right of the point. */
function isInside({ x, y }: Point, polygons: Laid): boolean {
  let isIn = false;
  for (const polygon of polygons) {
    let start = polygon.at(-1);
    for (const end of polygon) {
      if (start && start.y <= y !== end.y <= y) {
        const across = start.x + ((y - start.y) / (end.y - start.y)) * (end.x - start.x);
        if (across > x) isIn = !isIn;
      }
      start = end;
    }
  }
  return isIn;
}

/** How often lines of different outlines cross. */
function crossingsIn(laid: readonly Laid[]): number {
  const pieces = laid.map((polygons) =>
    polygons.flatMap((polygon) =>
      polygon.map(
        (start, index) => [start, polygon[(index + 1) % polygon.length] ?? start] as const,
      ),
    ),
  );
  const pairs = pieces.flatMap((one, index) =>
    pieces.slice(index + 1).map((other) => [one, other] as const),
  );
  return pairs.reduce(
    (sum, [one, other]) =>
      sum +
      one.reduce((part, piece) => part + other.filter((more) => areCrossed(piece, more)).length, 0),
    0,
  );
}

type Piece = readonly [start: Point, end: Point];

function areCrossed([a, b]: Piece, [c, d]: Piece): boolean {
  const isBeside =
    Math.max(a.x, b.x) < Math.min(c.x, d.x) || Math.max(c.x, d.x) < Math.min(a.x, b.x);
  return !isBeside && side(a, b, c) !== side(a, b, d) && side(c, d, a) !== side(c, d, b);
}

function side(a: Point, b: Point, point: Point): boolean {
  return (b.x - a.x) * (point.y - a.y) - (b.y - a.y) * (point.x - a.x) > 0;
}
