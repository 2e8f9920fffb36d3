// The page as it will look when it has been made by hand, at true size.
import {
  type Bounds,
  compose,
  moveBy,
  rectanglePath,
  scaleBy,
  type Transform,
} from '../base/index.ts';
import {
  FAINT_INK,
  FINE_MM,
  type Group,
  group,
  LINE_MM,
  line,
  type SceneNode,
  stroked,
} from '../page/index.ts';
import { middleOf } from './bounds.ts';
import type { Laid } from './layout.ts';
import type { Fold } from './parts.ts';
import type { Piece } from './piece.ts';
import type { PageSizeMm } from './rules.ts';

const DASH_MM = [2, 1.5] as const;
const CREASE_MM = [5, 2, 1, 2] as const;

/** Boxes and lines below what stands on them; of each thing one group, in the order of the pieces. */
export function drawLaid(
  laid: readonly Laid[],
  folds: readonly Fold[],
  { widthMm, heightMm }: PageSizeMm,
): Group {
  const isRuled = ({ piece }: Laid) => piece.kind === 'box' || piece.kind === 'line';
  const creases = folds.map(({ direction, atMm }) =>
    direction === 'across'
      ? line(atMm, 0, atMm, heightMm, CREASE)
      : line(0, atMm, widthMm, atMm, CREASE),
  );
  return group('by-hand', [
    group('folds', creases),
    group('ruled', laid.filter(isRuled).map(drawRuled)),
    group('placed', laid.filter((each) => !isRuled(each)).map(drawPlaced)),
  ]);
}

const CREASE = { colour: FAINT_INK, widthMm: FINE_MM, dashMm: CREASE_MM };

function drawRuled({ piece, bounds: { left, top, right, bottom } }: Laid): SceneNode {
  const dash = piece.isDashed ? { dashMm: DASH_MM } : {};
  if (piece.kind === 'line') {
    const [fromY, toY] = piece.rises ? [bottom, top] : [top, bottom];
    return line(left, fromY, right, toY, { widthMm: LINE_MM, ...dash });
  }
  return stroked(rectanglePath(left, top, right - left, bottom - top), dash);
}

function drawPlaced({ piece, bounds }: Laid): Group {
  return { ...group('placed', [piece.node]), transform: placing(piece, bounds) };
}

/** From the coordinates of the piece's node to where it is made. */
function placing(piece: Piece, bounds: Bounds): Transform {
  const from = piece.from ?? piece.bounds;
  const [was, is] = [middleOf(from), middleOf(bounds)];
  const by = (bounds.right - bounds.left) / (from.right - from.left);
  const scale = Number.isFinite(by) ? by : 1;
  return compose(
    compose(moveBy(is.x, is.y), scaleBy(scale)),
    compose(moveBy(-was.x, -was.y), piece.transform),
  );
}
