// What lies on a page as operators of a PDF content stream whose unit is a hundredth of a millimetre, y down.
import { compose, moveBy, type Transform } from '../base/index.ts';
import type { Group, Shape, Text } from '../page/index.ts';
import { type Clip, type Drawing, numberOf, type PlacedShape } from './drawing.ts';
import type { Operators } from './operators.ts';
import { moveTo, type Pen, setFill, writeDrawing } from './pdf-drawing.ts';
import type { Lettering } from './pdf-lettering.ts';
import { writeLine } from './pdf-lines.ts';
import type { Stamps } from './pdf-stamps.ts';
import { writePdfPath } from './placing.ts';

/** Where something lies on the page, and the outlines outside of which it does not show. */
export interface Place {
  readonly transform: Transform;
  readonly clips: readonly Clip[];
  /** What it is part of. */
  readonly group: Group | undefined;
}

/** A shape or a line of text with where it lies. */
export interface Leaf extends Place {
  readonly node: Shape | Text;
}

/** What lies there. */
export function leafAt(node: Leaf['node'], { transform, clips, group }: Place): Leaf {
  return { node, transform, clips, group };
}

/** What leaves are written with. */
export interface Writer {
  readonly content: Operators;
  readonly pen: Pen;
  readonly lettering: Lettering;
  readonly stamps: Stamps;
  /** Filled anew for each drawing. */
  readonly drawing: Drawing;
}

/** Draws the leaves in turn with the pen as it is, and leaves it as they leave the page. */
export function writeLeaves(leaves: readonly Leaf[], writer: Writer): void {
  const lastText = lastTextAmong(leaves);
  for (let at = 0; at < leaves.length; ) {
    const { node, group, transform, clips } = leaves[at] as Leaf;
    if (node.kind === 'text') {
      writeText(node, transform, clips, at < lastText, writer);
      at += 1;
      continue;
    }
    const start = at;
    while (leaves[at]?.group === group && leaves[at]?.node.kind === 'shape') at++;
    writeShapes(leaves as readonly PlacedShape[], start, at, writer);
  }
}

/** Its place, or −1. */
function lastTextAmong(leaves: readonly Leaf[]): number {
  let place = leaves.length - 1;
  while (place >= 0 && leaves[place]?.node.kind !== 'text') place--;
  return place;
}

function writeShapes(
  shapes: readonly PlacedShape[],
  from: number,
  end: number,
  { content, pen, stamps, drawing }: Writer,
): void {
  drawing.take(shapes, from, end);
  if (drawing.length === 0) return;
  moveTo(drawing.x, drawing.y, content, pen);
  const stamp = stamps.nameOf(drawing);
  if (stamp === undefined) writeDrawing(drawing, content, pen);
  else content.text(`/${stamp} Do\n`);
}

function writeText(
  line: Text,
  transform: Transform,
  clips: readonly Clip[],
  isFollowed: boolean,
  { content, pen, lettering }: Writer,
): void {
  const fromOrigin = (place: Transform) => compose(moveBy(-pen.x / 100, -pen.y / 100), place);
  if (clips.length > 0) content.text('q\n');
  for (const clip of clips) {
    writePdfPath(clip.path, fromOrigin(clip.transform), content);
    content.text('W n\n');
  }
  setFill(numberOf(line.colour), content, clips.length > 0 ? { ...pen } : pen);
  writeLine(line, fromOrigin(transform), isFollowed, content, lettering);
  if (clips.length > 0) content.text('Q\n');
}
