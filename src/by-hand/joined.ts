// Things that hang together in the drawing: a sign inside a shape, a square that fills a cell, a line between two dots.
import { compose, IDENTITY, pathBounds, type Transform, transformPath } from '../base/index.ts';
import { formOf, isShape } from '../figures/index.ts';
import { OUTLINE_MM, type SceneNode, type Shape } from '../page/index.ts';
import { blanksBetween, grown, isWithin } from './bounds.ts';
import { pathKind } from './path-kind.ts';
import { isStanding, type Piece } from './piece.ts';

/** A piece that lies over another by less than this, in mm, only touches it. */
const TOUCH_MM = 0.6;

/** The pieces with what hangs together said of them. */
export function joined(pieces: readonly Piece[]): readonly Piece[] {
  const filled = pieces.map((piece) => asPatch(piece, pieces) ?? asLine(piece, pieces) ?? piece);
  return filled.map((piece) => {
    const carrier = carrierOf(piece, filled);
    return carrier ? { ...piece, rides: carrier } : piece;
  });
}

/** A square that fills a cell between lines is ruled by its edges. */
function asPatch(piece: Piece, pieces: readonly Piece[]): Piece | undefined {
  if (piece.kind !== 'figure' || piece.name !== undefined) return undefined;
  const { figure, bounds } = piece;
  const isUpright = (figure.turn ?? 0) % 90 === 0;
  if (formOf(figure) !== 'square' || !isUpright) return undefined;
  const isBetweenLines = pieces.some((other) => {
    if (other.kind !== 'line') return false;
    const { across, down } = blanksBetween(bounds, other.bounds);
    return Math.max(across, down) < 0;
  });
  return isBetweenLines
    ? { ...piece, kind: 'patch', bounds: grown(bounds, -OUTLINE_MM / 2) }
    : undefined;
}

/** A straight stroke that begins at a dot is ruled from there. */
function asLine(piece: Piece, pieces: readonly Piece[]): Piece | undefined {
  if (piece.kind !== 'figure' || isShape(formOf(piece.figure))) return undefined;
  if (piece.figure.colour !== undefined) return undefined;
  const strokes = shapesIn(piece.node, piece.transform);
  const [stroke] = strokes;
  if (!stroke || strokes.length > 1) return undefined;
  const kind = pathKind(stroke.path);
  if (kind !== 'line' && kind !== 'rising-line') return undefined;
  const isJoining = pieces.some((other) => {
    if (other.kind !== 'dot') return false;
    const { across, down } = blanksBetween(piece.bounds, other.bounds);
    return Math.max(across, down) < -TOUCH_MM;
  });
  const { figure: _, name: __, ...drawn } = piece;
  return isJoining
    ? { ...drawn, kind: 'line', bounds: pathBounds(stroke.path), rises: kind === 'rising-line' }
    : undefined;
}

function shapesIn(node: SceneNode, transform: Transform): readonly Shape[] {
  if (node.kind === 'shape') return [{ ...node, path: transformPath(node.path, transform) }];
  if (node.kind === 'text') return [];
  const inner = compose(transform, node.transform ?? IDENTITY);
  return node.children.flatMap((child) => shapesIn(child, inner));
}

/** The figure that a piece stands inside, so that both are made together. */
function carrierOf(piece: Piece, pieces: readonly Piece[]): Piece | undefined {
  if (!isStanding(piece)) return undefined;
  return pieces.find(
    (other) =>
      other !== piece &&
      other.kind === 'figure' &&
      isWithin(piece.bounds, other.bounds, TOUCH_MM) &&
      !isWithin(other.bounds, piece.bounds, TOUCH_MM),
  );
}
