// Short ways to write the nodes of a scene.
import { linePath, type Path, rectanglePath } from '../base/index.ts';
import { type Figure, placeOf } from '../figures/index.ts';
import { INK, LINE_MM, WHITE } from './ink.ts';
import type { Group, Paint, SceneNode, Shape, Stroke, Text } from './scene.ts';

export function group(role: string, children: readonly SceneNode[], alt?: string): Group {
  return { kind: 'group', role, children, ...(alt === undefined ? {} : { alt }) };
}

/** The group as one of the things that a task's decisions are about; see `Group.mark`. */
export function marked(node: Group, mark: number): Group {
  return { ...node, mark };
}

/** The node as something that the child looks at while it answers. */
export function asModel<N extends Group | Shape>(node: N): N {
  return { ...node, use: 'model' };
}

/** The node as a place where the child answers. */
export function asPlace<N extends Group | Shape>(node: N): N {
  return { ...node, use: 'place' };
}

/** The group as the drawing of one figure; see `Group.shows`. */
export function showing(node: Group, shows: Figure): Group {
  return { ...node, shows };
}

/** The group as the picture of a figure that may know its place; see `Group.place`. */
export function traced(figure: Figure, node: Group): Group {
  const place = placeOf(figure);
  return place === undefined ? node : { ...node, place };
}

export function filled(path: Path, fill: Paint, stroke?: Stroke): Shape {
  return { kind: 'shape', path, fill, ...(stroke ? { stroke } : {}) };
}

export function stroked(path: Path, stroke: Partial<Stroke> = {}): Shape {
  return { kind: 'shape', path, stroke: { colour: INK, widthMm: LINE_MM, ...stroke } };
}

/** A box that figures stand in: white, one ink line, gently rounded; the line lies inside the given size. */
export function box(
  left: number,
  top: number,
  width: number,
  height: number,
  { radiusMm = 3, widthMm = LINE_MM }: { radiusMm?: number; widthMm?: number } = {},
): Shape {
  const inset = widthMm / 2;
  const path = rectanglePath(
    left + inset,
    top + inset,
    width - widthMm,
    height - widthMm,
    radiusMm,
  );
  return filled(path, WHITE, { colour: INK, widthMm });
}

export function line(
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  stroke: Partial<Stroke> = {},
): Shape {
  const path = linePath([
    { x: x1, y: y1 },
    { x: x2, y: y2 },
  ]);
  return stroked(path, stroke);
}

export function text(
  words: string,
  xMm: number,
  baselineMm: number,
  emMm: number,
  {
    weight = 'regular',
    anchor = 'start',
    colour = INK,
    direction,
  }: Partial<Pick<Text, 'weight' | 'anchor' | 'colour' | 'direction'>> = {},
): Text {
  const node = { text: words, xMm, baselineMm, emMm, weight, anchor, colour };
  return { kind: 'text', ...node, ...(direction === undefined ? {} : { direction }) };
}
