// Measures a drawn scene: where each shape and text lies on the page, strokes included.
import {
  type Bounds,
  compose,
  IDENTITY,
  pathBounds,
  type Transform,
  transformPath,
} from '../src/base/index.ts';
import { type Group, leftShare, type SceneNode, textWidthMm } from '../src/page/index.ts';

export interface Placed {
  readonly node: SceneNode;
  readonly bounds: Bounds;
  /** Roles of the groups round it, outermost first. */
  readonly roles: readonly string[];
}

/** Every group with a clip, shape and text under `node`, with its bounds in the coordinates of the root. */
export function placedIn(
  node: SceneNode,
  transform: Transform = IDENTITY,
  roles: readonly string[] = [],
): Placed[] {
  if (node.kind === 'group') {
    const inner = compose(transform, node.transform ?? IDENTITY);
    const path = node.role ? [...roles, node.role] : roles;
    if (node.clip)
      return [{ node, bounds: pathBounds(transformPath(node.clip, inner)), roles: path }];
    return node.children.flatMap((child) => placedIn(child, inner, path));
  }
  if (node.kind === 'shape') {
    const half = ((node.stroke?.widthMm ?? 0) / 2) * Math.hypot(transform[0], transform[1]);
    const { left, top, right, bottom } = pathBounds(transformPath(node.path, transform));
    const bounds = {
      left: left - half,
      top: top - half,
      right: right + half,
      bottom: bottom + half,
    };
    return [{ node, bounds, roles }];
  }
  const width = textWidthMm(node.text, node.emMm, node.weight);
  const left = node.xMm - leftShare(node) * width;
  const scale = transform[0];
  return [
    {
      node,
      roles,
      bounds: {
        left: left * scale + transform[4],
        right: (left + width) * scale + transform[4],
        top: (node.baselineMm - node.emMm) * scale + transform[5],
        bottom: (node.baselineMm + 0.3 * node.emMm) * scale + transform[5],
      },
    },
  ];
}

/** All groups of a role below `node`, in the order in which they are drawn; none within another of them. */
export function groupsOf(node: SceneNode, role: string): readonly Group[] {
  if (node.kind !== 'group') return [];
  return node.children.flatMap((child) => {
    if (child.kind !== 'group') return [];
    return child.role === role ? [child] : groupsOf(child, role);
  });
}

/** The bounds of one node, or of several together, strokes included. */
export function boundsOf(drawn: SceneNode | readonly SceneNode[]): Bounds {
  const parts = [drawn].flat().flatMap((node) => placedIn(node).map(({ bounds }) => bounds));
  return {
    left: Math.min(...parts.map(({ left }) => left)),
    top: Math.min(...parts.map(({ top }) => top)),
    right: Math.max(...parts.map(({ right }) => right)),
    bottom: Math.max(...parts.map(({ bottom }) => bottom)),
  };
}

/** The blank between two upright rectangles: the larger of that beside and that below. */
export function blankBetween(one: Bounds, other: Bounds): number {
  return Math.max(
    one.left - other.right,
    other.left - one.right,
    one.top - other.bottom,
    other.top - one.bottom,
  );
}

/** What of `node` lies outside the rectangle from (0, 0), in words. */
export function outsideOf(
  node: SceneNode,
  widthMm: number,
  heightMm: number,
  slackMm = 0.02,
): string[] {
  return placedIn(node)
    .filter(
      ({ bounds }) =>
        bounds.left < -slackMm ||
        bounds.top < -slackMm ||
        bounds.right > widthMm + slackMm ||
        bounds.bottom > heightMm + slackMm,
    )
    .map(
      ({ node: { kind }, bounds, roles }) =>
        `${roles.join(' › ')} ${kind} ${JSON.stringify(bounds)}`,
    );
}
