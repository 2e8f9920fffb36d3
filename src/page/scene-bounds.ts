// Where the ink of a drawn scene ends, so that it can be cut out and laid elsewhere at its true size.
import {
  type Bounds,
  compose,
  IDENTITY,
  pathBounds,
  type Transform,
  transformPath,
  unionOf,
} from '../base/index.ts';
import type { Area } from './layout.ts';
import type { Group, SceneNode, Shape, Text } from './scene.ts';
import { leftShare } from './setting.ts';
import { textWidthMm } from './type.ts';

/** What letters reach below their baseline, in ems; by eye. */
const DESCENT_EMS = 0.3;

/** The upright rectangle round all ink of the node, strokes included, in mm; undefined where nothing is drawn. */
export function inkArea(node: SceneNode, transform: Transform = IDENTITY): Area | undefined {
  const all = boundsIn(node, transform);
  if (all.length === 0) return undefined;
  const { left, top, right, bottom } = unionOf(all);
  return { left, top, width: right - left, height: bottom - top };
}

/** A group that was found in a scene, with where it stands there. */
export interface FoundGroup {
  readonly group: Group;
  /** From the coordinates round the group to those of the scene. */
  readonly transform: Transform;
}

/** All groups of these roles below the node, in the order in which they are drawn; none within another of them. */
export function groupsWithRole(
  node: SceneNode,
  roles: readonly string[],
  transform: Transform = IDENTITY,
): readonly FoundGroup[] {
  if (node.kind !== 'group') return [];
  if (node.role !== undefined && roles.includes(node.role)) return [{ group: node, transform }];
  const inner = compose(transform, node.transform ?? IDENTITY);
  return node.children.flatMap((child) => groupsWithRole(child, roles, inner));
}

function boundsIn(node: SceneNode, transform: Transform): readonly Bounds[] {
  switch (node.kind) {
    case 'shape':
      return [shapeBounds(node, transform)];
    case 'text':
      return [textBounds(node, transform)];
    case 'group': {
      const inner = compose(transform, node.transform ?? IDENTITY);
      if (node.clip) return [pathBounds(transformPath(node.clip, inner))];
      return node.children.flatMap((child) => boundsIn(child, inner));
    }
  }
}

function shapeBounds({ path, stroke }: Shape, transform: Transform): Bounds {
  const half = ((stroke?.widthMm ?? 0) / 2) * Math.hypot(transform[0], transform[1]);
  const { left, top, right, bottom } = pathBounds(transformPath(path, transform));
  return { left: left - half, top: top - half, right: right + half, bottom: bottom + half };
}

/** Of words that are not turned. */
function textBounds(words: Text, [scale, , , , x, y]: Transform): Bounds {
  const { text, xMm, baselineMm, emMm, weight } = words;
  const width = textWidthMm(text, emMm, weight);
  const left = xMm - leftShare(words) * width;
  return {
    left: left * scale + x,
    right: (left + width) * scale + x,
    top: (baselineMm - emMm) * scale + y,
    bottom: (baselineMm + DESCENT_EMS * emMm) * scale + y,
  };
}
