// Shapes as operators of a PDF content stream whose unit is a hundredth of a millimetre, y down.
import type { Path, Transform } from '../base/index.ts';
import type { Paint, Shape, Stroke, Text } from '../page/index.ts';
import { factorText, hundredthsOf } from './numbers.ts';
import type { Operators } from './operators.ts';
import type { Lettering } from './pdf-lettering.ts';
import { writeLine } from './pdf-lines.ts';
import { scaleOf, writePdfPath } from './placing.ts';

/** Where something lies on the page, and the outlines outside of which it does not show. */
export interface Place {
  readonly transform: Transform;
  readonly clips: readonly Clip[];
}

interface Clip {
  readonly path: Path;
  readonly transform: Transform;
}

/** A shape or a line of text with where it lies. */
export interface Leaf extends Place {
  readonly node: Shape | Text;
}

/** What lies there. */
export function leafAt(node: Leaf['node'], { transform, clips }: Place): Leaf {
  return { node, transform, clips };
}

/** What the page's graphics state holds, so that nothing is said twice. */
export interface Pen {
  fill?: Paint;
  stroke?: Paint;
  width?: number;
  ends?: Stroke['ends'];
  dash?: string;
}

/** Draws the leaves in turn with the pen as it is, and leaves it as they leave the page. */
export function writeLeaves(
  leaves: readonly Leaf[],
  to: Operators,
  pen: Pen,
  lettering: Lettering,
): void {
  const lastText = lastTextAmong(leaves);
  let open: readonly Clip[] = [];
  let held = pen;
  const clipTo = (clips: readonly Clip[]) => {
    if (open.length > 0) to.text('Q\n');
    if (clips.length > 0) to.text('q\n');
    for (const { path, transform } of clips) {
      writePdfPath(path, transform, to);
      to.text('W n\n');
    }
    // What is set inside a clip is thrown away with it.
    [open, held] = [clips, clips.length > 0 ? { ...pen } : pen];
  };
  for (let at = 0; at < leaves.length; at++) {
    const leaf = leaves[at] as Leaf;
    if (leaf.clips !== open) clipTo(leaf.clips);
    if (leaf.node.kind === 'text') {
      setFill(leaf.node.colour, to, held);
      writeLine(leaf.node, leaf.transform, at < lastText, to, lettering);
      continue;
    }
    const line = lineAlong(leaf, leaves[at + 1]);
    if (line) at += 1;
    writeShape(leaf.node, line ?? leaf.node.stroke, leaf.transform, to, held);
  }
  clipTo([]);
}

/** Its place, or −1. */
function lastTextAmong(leaves: readonly Leaf[]): number {
  let place = leaves.length - 1;
  while (place >= 0 && leaves[place]?.node.kind !== 'text') place--;
  return place;
}

/** The line that is drawn along the outline of a shape that was only filled, where it comes right after it. */
function lineAlong(leaf: Leaf, next: Leaf | undefined): Stroke | undefined {
  const shape = leaf.node;
  const line = next?.node;
  if (shape.kind !== 'shape' || line?.kind !== 'shape' || shape.path !== line.path)
    return undefined;
  if (!shape.fill || shape.stroke || line.fill) return undefined;
  const isPlacedAlike = leaf.transform === next?.transform && leaf.clips === next.clips;
  return isPlacedAlike ? line.stroke : undefined;
}

function writeShape(
  { path, fill, rule }: Shape,
  stroke: Stroke | undefined,
  transform: Transform,
  to: Operators,
  pen: Pen,
): void {
  if (!fill && !stroke) return;
  if (fill) setFill(fill, to, pen);
  if (stroke) setStroke(stroke, scaleOf(transform), to, pen);
  writePdfPath(path, transform, to);
  const paint = fill ? (stroke ? 'B' : 'f') : 'S';
  to.text(fill && rule === 'evenodd' ? `${paint}*\n` : `${paint}\n`);
}

function setFill(paint: Paint, to: Operators, pen: Pen): void {
  if (pen.fill === paint) return;
  pen.fill = paint;
  to.text(`${inks(paint)} rg\n`);
}

function setStroke(stroke: Stroke, scale: number, to: Operators, pen: Pen): void {
  const { colour, widthMm, dashMm, ends = 'round' } = stroke;
  if (pen.stroke !== colour) to.text(`${inks(colour)} RG\n`);
  const width = hundredthsOf(widthMm * scale);
  if (pen.width !== width) to.text(`${width} w\n`);
  // Mitres as in SVG, whose limit is 4 where nothing is said (ISO 32000 says 10).
  if (pen.ends !== ends) to.text(ends === 'square' ? '0 J 0 j 4 M\n' : '1 J 1 j\n');
  const dash = dashMm?.map((mm) => hundredthsOf(mm * scale)).join(' ') ?? '';
  if (pen.dash !== dash) to.text(`[${dash}] 0 d\n`);
  pen.stroke = colour;
  pen.width = width;
  pen.ends = ends;
  pen.dash = dash;
}

const known = new Map<Paint, string>();

/** `#rrggbb` as three shares of light; there are few of them, each worked out once. */
function inks(paint: Paint): string {
  const found = known.get(paint);
  if (found !== undefined) return found;
  const shares = [1, 3, 5]
    .map((at) => factorText(Number.parseInt(paint.slice(at, at + 2), 16) / 255))
    .join(' ');
  known.set(paint, shares);
  return shares;
}
