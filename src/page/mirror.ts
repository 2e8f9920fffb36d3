// Pages that are read from right to left: everything stands as far from the other side, and nothing is turned round that
// has a look of its own.
import {
  compose,
  IDENTITY,
  moveBy,
  scaleBy,
  transformPath,
  transformPoint,
} from '../base/index.ts';
import { directionOf } from '../languages/index.ts';
import type { Area } from './layout.ts';
import type { PrintStyle } from './print-style.ts';
import type { Group, Page, SceneNode, Text } from './scene.ts';

/** Whether pages in the language, a BCP 47 tag, are read from right to left; absent: English. */
export function isMirrored(language = 'en'): boolean {
  return directionOf(language) === 'rtl';
}

/** The page of a layout that is read from left to right, as it is read in the language. */
export function pageIn(language: string, page: Page): Page {
  return { ...page, nodes: nodesIn(language, page.nodes, page.widthMm) };
}

/** Nodes of a page or a task so wide, as they stand in the language. */
export function nodesIn<N extends SceneNode>(
  language: string,
  nodes: readonly N[],
  widthMm: number,
): readonly N[] {
  return isMirrored(language) ? nodes.map((node) => mirrored(node, widthMm / 2)) : nodes;
}

/** A group that keeps its look on a mirrored page; it stands about `xMm` of its own coordinates. */
export function kept(node: Group, xMm: number): Group {
  return { ...node, keptAboutMm: xMm };
}

/** The area as far from the other side of a whole so wide. */
export function mirroredArea(area: Area, wholeMm: number): Area {
  return { ...area, left: wholeMm - area.left - area.width };
}

/**
 * For which hand a task is laid out before it is mirrored: mirrored, what is left for the one hand is right for the
 * other.
 */
export function beforeMirroring(style: PrintStyle): PrintStyle {
  const { hand, ...others } = style;
  return hand === 'left' ? others : { ...others, hand: 'left' };
}

/** The node about the upright line at `aboutMm`: places change sides, and what is kept only moves. */
export function mirrored<N extends SceneNode>(node: N, aboutMm: number): N;
export function mirrored(node: SceneNode, aboutMm: number): SceneNode {
  switch (node.kind) {
    case 'shape':
      return { ...node, path: transformPath(node.path, acrossAt(aboutMm)) };
    case 'text':
      return mirroredText(node, aboutMm);
    case 'group':
      return node.keptAboutMm === undefined
        ? mirroredGroup(node, aboutMm)
        : moved(node, node.keptAboutMm, aboutMm);
  }
}

function acrossAt(aboutMm: number) {
  return compose(moveBy(2 * aboutMm, 0), scaleBy(-1, 1));
}

/** What a group holds is mirrored in its own coordinates, and its place with it. */
function mirroredGroup(node: Group, aboutMm: number): Group {
  const { transform, clip, children } = node;
  const inner = transform ? 0 : aboutMm;
  return {
    ...node,
    children: children.map((child) => mirrored(child, inner)),
    ...(clip ? { clip: transformPath(clip, acrossAt(inner)) } : {}),
    ...(transform
      ? { transform: compose(acrossAt(aboutMm), compose(transform, acrossAt(0))) }
      : {}),
  };
}

function moved(node: Group, keptAboutMm: number, aboutMm: number): Group {
  const own = node.transform ?? IDENTITY;
  const { x } = transformPoint(own, keptAboutMm, 0);
  return { ...node, transform: compose(moveBy(2 * (aboutMm - x), 0), own) };
}

/** Letters that run to the left, and any letter. */
const LEFTWARD_LETTER = /[\p{Script=Arabic}\p{Script=Hebrew}]/u;
const LETTER = /\p{L}/u;
const OTHER_END = { start: 'end', middle: 'middle', end: 'start' } as const;

/**
 * Words begin at the right; a sheet's code or a Latin name, which run to the right wherever they stand, end there. A
 * direction that was given is that of the page.
 */
function mirroredText(node: Text, aboutMm: number): Text {
  const xMm = 2 * aboutMm - node.xMm;
  const runsRight = LETTER.test(node.text) && !LEFTWARD_LETTER.test(node.text);
  return runsRight && node.direction === undefined
    ? { ...node, xMm, anchor: OTHER_END[node.anchor], direction: 'ltr' }
    : { ...node, xMm, direction: 'rtl' };
}

/** A code among words, set apart where they run to the left so that its parts keep their order (Unicode, Annex #9). */
export function codeIn(language: string, code: string): string {
  return isMirrored(language) ? `\u2066${code}\u2069` : code;
}
