// How far drawn things reach, their strokes included; in mm.
import {
  type Bounds,
  compose,
  IDENTITY,
  type Point,
  pathBounds,
  type Transform,
  transformPath,
  unionOf,
} from '../base/index.ts';
import { leftShare, type SceneNode, textWidthMm } from '../page/index.ts';

/** Below the baseline a letter reaches this share of the em, above it the rest (by eye). */
const BELOW_EMS = 0.25;

export function boundsOf(node: SceneNode, transform: Transform = IDENTITY): Bounds {
  if (node.kind === 'shape') {
    const half = ((node.stroke?.widthMm ?? 0) / 2) * scaleOf(transform);
    return grown(pathBounds(transformPath(node.path, transform)), half);
  }
  if (node.kind === 'text') {
    const width = textWidthMm(node.text, node.emMm, node.weight);
    const left = node.xMm - leftShare(node) * width;
    const [scale, x, y] = [transform[0], transform[4], transform[5]];
    return {
      left: left * scale + x,
      right: (left + width) * scale + x,
      top: (node.baselineMm - (1 - BELOW_EMS) * node.emMm) * scale + y,
      bottom: (node.baselineMm + BELOW_EMS * node.emMm) * scale + y,
    };
  }
  const inner = compose(transform, node.transform ?? IDENTITY);
  const all = unionOf(node.children.map((child) => boundsOf(child, inner)));
  return node.clip ? crossed(all, pathBounds(transformPath(node.clip, inner))) : all;
}

/** How much longer lengths become; transforms of pages keep proportions. */
export function scaleOf([a, b]: Transform): number {
  return Math.hypot(a, b);
}

/** What lies in both. */
export function crossed(one: Bounds, other: Bounds): Bounds {
  return {
    left: Math.max(one.left, other.left),
    top: Math.max(one.top, other.top),
    right: Math.min(one.right, other.right),
    bottom: Math.min(one.bottom, other.bottom),
  };
}

export function grown({ left, top, right, bottom }: Bounds, byMm: number): Bounds {
  return { left: left - byMm, top: top - byMm, right: right + byMm, bottom: bottom + byMm };
}

export function middleOf({ left, top, right, bottom }: Bounds): Point {
  return { x: (left + right) / 2, y: (top + bottom) / 2 };
}

/** Whether `inner` lies in `outer`, or at most `slackMm` over its edge. */
export function isWithin(inner: Bounds, outer: Bounds, slackMm: number): boolean {
  return (
    inner.left >= outer.left - slackMm &&
    inner.top >= outer.top - slackMm &&
    inner.right <= outer.right + slackMm &&
    inner.bottom <= outer.bottom + slackMm
  );
}

/** The blank between two along each direction; negative where they overlap in it. */
export function blanksBetween(one: Bounds, other: Bounds) {
  return {
    across: Math.max(one.left - other.right, other.left - one.right),
    down: Math.max(one.top - other.bottom, other.top - one.bottom),
  };
}
