// The guide for making one sheet by hand: what to fold and rule, what to stick on and what to draw, and where.
import type { Language } from '../activities/index.ts';
import { accept, type Bounds, type Result, refuse } from '../base/index.ts';
import { pageSize } from '../page/index.ts';
import type { Sheet } from '../sheets/index.ts';
import { joined } from './joined.ts';
import { type Laid, layoutOf, sizedBy } from './layout.ts';
import { type Moves, minutesFor } from './minutes.ts';
import type { CopyReason, Fold, Placement, RuledBox, RuledLine } from './parts.ts';
import type { Piece } from './piece.ts';
import { placementsOf } from './placements.ts';
import { readPieces } from './read-pieces.ts';
import type { PageSizeMm } from './rules.ts';
import { stickerRefusals } from './sticker-refusals.ts';

/** How a sheet is made by hand. */
export interface Guide {
  readonly sheet: Sheet;
  readonly page: PageSizeMm;
  /** Why the whole page is to be copied square by square; absent: all is placed with a ruler. */
  readonly copied?: CopyReason;
  readonly folds: readonly Fold[];
  readonly boxes: readonly RuledBox[];
  readonly lines: readonly RuledLine[];
  /** Stickers first, each colour together; then what is drawn, each pen together. Numbered from 1. */
  readonly placements: readonly Placement[];
  /** Not rounded. */
  readonly minutes: number;
  /** All pieces where they are made, in reading order; of a copied page as printed. */
  readonly laid: readonly Laid[];
}

export interface GuideWishes {
  readonly language?: Language;
  /** Diameter in mm of the dot stickers at hand; absent: those that are sold, as near to the printed dots as can be. */
  readonly stickerMm?: number;
}

/**
 * The guide for a sheet; there is one for every sheet. Refuses stickers that are larger than the places of the
 * sheet, or than any sticker is.
 */
export function makeGuide(sheet: Sheet, wishes: GuideWishes = {}): Result<Guide> {
  const { stickerMm, language = 'en' } = wishes;
  const { paper, orientation } = sheet.spec.page;
  const page = pageSize(paper, orientation);
  const pieces = joined(readPieces(sheet));
  const mayFold = sheet.tasks.length === 1;
  const layout = layoutOf(pieces, { page, mayFold, stickerMm });
  const refused = stickerRefusals(sheet.code, pieces, { page, mayFold, stickerMm }, layout);
  if (refused.length > 0) return refuse(...refused);
  const isCopied = typeof layout === 'string';
  const laid = isCopied ? asPrinted(pieces, stickerMm) : layout.laid;
  const folds = isCopied ? [] : layout.folds;
  const boxes = boxesOf(laid);
  const lines = linesOf(laid);
  const areas = isCopied || layout.panels.length === 0 ? boxes.map(boundsOfBox) : layout.panels;
  const placements = placementsOf(laid, areas, language);
  const made = { sheet, page, folds, boxes, lines, placements, laid };
  return accept({
    ...made,
    ...(isCopied ? { copied: layout } : {}),
    minutes: minutesFor(movesOf(made, isCopied)),
  });
}

/** The pieces at their printed places, stickers at the size of stickers. */
function asPrinted(pieces: readonly Piece[], stickerMm: number | undefined): readonly Laid[] {
  return pieces.map((piece) => {
    const { bounds, sticker } = sizedBy(piece, 1, stickerMm);
    return { piece, bounds, sticker };
  });
}

function boxesOf(laid: readonly Laid[]): readonly RuledBox[] {
  return laid
    .filter(({ piece }) => piece.kind === 'box')
    .map(({ piece, bounds: { left, top, right, bottom } }, index) => ({
      number: index + 1,
      leftMm: left,
      topMm: top,
      widthMm: right - left,
      heightMm: bottom - top,
      isDashed: piece.isDashed,
    }));
}

function boundsOfBox({ leftMm, topMm, widthMm, heightMm }: RuledBox): Bounds {
  return { left: leftMm, top: topMm, right: leftMm + widthMm, bottom: topMm + heightMm };
}

function linesOf(laid: readonly Laid[]): readonly RuledLine[] {
  return laid.flatMap(({ piece, bounds: { left, top, right, bottom } }) => {
    if (piece.kind !== 'line') return [];
    const [fromY, toY] = piece.rises ? [bottom, top] : [top, bottom];
    return [{ from: [left, fromY] as const, to: [right, toY] as const, isDashed: piece.isDashed }];
  });
}

const LINES_A_BOX = 4;

function movesOf(
  { folds, boxes, lines, placements, laid }: Omit<Guide, 'sheet' | 'page' | 'minutes'>,
  isCopied: boolean,
): Moves {
  const stickers = placements.filter(({ isSticker }) => isSticker);
  const drawn = placements.filter(({ isSticker }) => !isSticker);
  const copied = drawn.filter((placement) => placement.isCopied);
  const isCircle = ({ piece }: Placement) => {
    const kind = laid[piece]?.piece.kind;
    return kind === 'ring' || kind === 'dot';
  };
  const circles = drawn.filter(isCircle);
  const colours = new Set(placements.map(({ isSticker, colour }) => `${isSticker} ${colour}`));
  return {
    start: 1,
    fold: folds.length,
    line: lines.length + LINES_A_BOX * boxes.length,
    sticker: stickers.length,
    changeOfColour: colours.size,
    drawing: drawn.length - copied.length - circles.length,
    circle: circles.length,
    copying: copied.length,
    curve: isCopied ? laid.filter(({ piece }) => piece.kind === 'free').length : 0,
  };
}
