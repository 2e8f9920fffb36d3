// Finds ruler marks for all pieces of a sheet: folded where that will do, drawn smaller where it must be.
import type { Bounds } from '../base/index.ts';
import { middleOf } from './bounds.ts';
import { folded } from './folds.ts';
import type { CopyReason, Fold } from './parts.ts';
import { isStanding, type Piece } from './piece.ts';
import { axesOf, type PageSizeMm, type Sized } from './rules.ts';
import { RULER_MM, snapped } from './snap.ts';
import { type Sticker, stickerFor } from './stickers.ts';

/** A piece where it is made by hand. */
export interface Laid {
  readonly piece: Piece;
  /** Middles of what stands, and ends of what is ruled, are whole `RULER_MM`. */
  readonly bounds: Bounds;
  readonly sticker?: Sticker | undefined;
}

export interface Layout {
  readonly folds: readonly Fold[];
  readonly laid: readonly Laid[];
  /** Parts of the folded page that stand for boxes; none where the page is not folded. */
  readonly panels: readonly Bounds[];
}

/** What is drawn may be made so much smaller where it has no room, as shares; common practice, no source. */
const SHRUNK = [1, 0.9, 0.8, 0.7];
/** Nothing is drawn smaller than this on that account, in mm. */
const LEAST_MM = 8;

export interface LayoutWishes {
  readonly page: PageSizeMm;
  /** Whether folds may take the place of boxes. */
  readonly mayFold: boolean;
  /** Diameter of the stickers at hand; absent: those that are sold. */
  readonly stickerMm?: number | undefined;
}

export function layoutOf(pieces: readonly Piece[], wishes: LayoutWishes): Layout | CopyReason {
  if (pieces.some(({ kind }) => kind === 'free')) return 'curves';
  let reason: CopyReason = 'crowded';
  for (const share of SHRUNK) {
    const sized = pieces
      .filter(({ rides }) => rides === undefined)
      .map((piece) => sizedBy(piece, share, wishes.stickerMm));
    const found = wishes.mayFold ? foldedLayout(sized, wishes.page) : undefined;
    if (found) return { ...found, laid: withRiders(pieces, found.laid) };
    const laid = laidOn(sized, wishes.page);
    if (typeof laid !== 'string') {
      return { folds: [], laid: withRiders(pieces, laid), panels: [] };
    }
    reason = laid;
  }
  return reason;
}

export interface SizedPiece extends Sized {
  readonly sticker?: Sticker | undefined;
}

/** The piece at `share` of its printed size, a dot at its sticker's. */
export function sizedBy(piece: Piece, share: number, stickerMm: number | undefined): SizedPiece {
  if (!isStanding(piece)) return { piece, bounds: piece.bounds };
  const sticker = stickerFor(piece, stickerMm);
  const { left, right, top, bottom } = piece.bounds;
  const longer = Math.max(right - left, bottom - top);
  const drawn = longer * share < LEAST_MM ? 1 : share;
  const by = sticker ? sticker.diameterMm / (right - left) : drawn;
  return { piece, bounds: scaledAbout(piece.bounds, by), ...(sticker ? { sticker } : {}) };
}

function scaledAbout(bounds: Bounds, by: number): Bounds {
  const { x, y } = middleOf(bounds);
  const [across, down] = [
    ((bounds.right - bounds.left) / 2) * by,
    ((bounds.bottom - bounds.top) / 2) * by,
  ];
  return { left: x - across, right: x + across, top: y - down, bottom: y + down };
}

function foldedLayout(sized: readonly SizedPiece[], page: PageSizeMm): Layout | undefined {
  const fold = folded(sized, page);
  const laid = fold && laidOn(fold.pieces, page);
  return fold && laid && typeof laid !== 'string'
    ? { folds: fold.folds, laid, panels: fold.panels }
    : undefined;
}

function laidOn(
  sized: readonly SizedPiece[],
  page: PageSizeMm,
): readonly Laid[] | 'overlapping' | 'crowded' {
  const axes = axesOf(sized, page);
  if (typeof axes === 'string') return axes;
  const marks = snapped(axes);
  if (!marks) return 'crowded';
  const endsOf = (all: readonly number[], index: number) => {
    const [from = 0, to = 0] = all.slice(2 * index, 2 * index + 2);
    return [from * RULER_MM, to * RULER_MM] as const;
  };
  return sized.map(({ piece, bounds, sticker }, index) => {
    const [left, right] = endsOf(marks.across, index);
    const [top, bottom] = endsOf(marks.down, index);
    const ends = { left, right, top, bottom };
    return { piece, bounds: isStanding(piece) ? about(bounds, left, top) : ends, sticker };
  });
}

function about(bounds: Bounds, x: number, y: number): Bounds {
  const [across, down] = [(bounds.right - bounds.left) / 2, (bounds.bottom - bounds.top) / 2];
  return { left: x - across, right: x + across, top: y - down, bottom: y + down };
}

/** All pieces in their order, those that stand inside others moved and made smaller with them. */
function withRiders(pieces: readonly Piece[], laid: readonly Laid[]): readonly Laid[] {
  const carriers = new Map(laid.map((each) => [originOf(each.piece), each]));
  return pieces.flatMap((piece) => {
    const carrier = carriers.get(piece.rides ? originOf(piece.rides) : originOf(piece));
    if (!carrier) return [];
    return piece.rides ? [{ piece, bounds: ridden(piece.bounds, carrier) }] : [carrier];
  });
}

/** Folding moves pieces; what they are drawn by stays. */
function originOf({ node }: Piece): object {
  return node;
}

function ridden(bounds: Bounds, { piece, bounds: to }: Laid): Bounds {
  const from = piece.from ?? piece.bounds;
  const by = (to.right - to.left) / (from.right - from.left);
  const x = (at: number) => to.left + by * (at - from.left);
  const y = (at: number) => to.top + by * (at - from.top);
  return {
    left: x(bounds.left),
    right: x(bounds.right),
    top: y(bounds.top),
    bottom: y(bounds.bottom),
  };
}
