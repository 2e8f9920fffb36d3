// Why a sheet cannot be made with the stickers at hand.
import { type Refusal, told } from '../base/index.ts';
import type { Sheet } from '../sheets/index.ts';
import { type Layout, type LayoutWishes, layoutOf } from './layout.ts';
import type { Piece } from './piece.ts';
import { readPieces } from './read-pieces.ts';
import { STICKER_RANGE_MM, stickerFor } from './stickers.ts';

const TOO_LARGE = {
  unit: told('reasons', 'amount.sticker'),
  advice: told('reasons', 'do.smaller-stickers'),
} as const;

/** `layout` is what came of the wishes. */
export function stickerRefusals(
  code: string,
  pieces: readonly Piece[],
  wishes: LayoutWishes,
  layout: Layout | string,
): readonly Refusal[] {
  const { stickerMm } = wishes;
  if (stickerMm === undefined) return [];
  const at = `${code} › sticker`;
  const size = sizeRefusals(stickerMm, at);
  if (size.length > 0) return size;
  const fits = typeof layout !== 'string' || !tooLarge(pieces, stickerMm);
  if (fits) return [];
  return [
    { code: 'does-not-fit', at, got: stickerMm, max: largestFor(pieces, wishes), ...TOO_LARGE },
  ];
}

/** Why no sticker is of that size. */
function sizeRefusals(stickerMm: number, at: string): readonly Refusal[] {
  const { min, max } = STICKER_RANGE_MM;
  if (!(stickerMm >= min && stickerMm <= max)) {
    return [{ code: 'out-of-range', at, got: stickerMm, min, max }];
  }
  return Number.isInteger(stickerMm)
    ? []
    : [{ code: 'wrong-type', at, got: stickerMm, expected: told('reasons', 'expected.mm') }];
}

/** Why stickers do not fit the dots of a half-made sheet. */
export function halfMadeRefusals(sheet: Sheet, stickerMm: number): readonly Refusal[] {
  const at = `${sheet.code} › sticker`;
  const size = sizeRefusals(stickerMm, at);
  if (size.length > 0) return size;
  const widths = readPieces(sheet)
    .filter((piece) => stickerFor(piece, stickerMm) !== undefined)
    .map(({ bounds }) => bounds.right - bounds.left);
  const max = Math.round(Math.min(Number.POSITIVE_INFINITY, ...widths));
  if (stickerMm <= max) return [];
  return [{ code: 'does-not-fit', at, got: stickerMm, max, ...TOO_LARGE }];
}

/** Whether a sticker is larger than a dot of a page that is copied as it is printed. */
function tooLarge(pieces: readonly Piece[], stickerMm: number): boolean {
  return pieces.some(
    (piece) =>
      stickerFor(piece, stickerMm) !== undefined &&
      stickerMm > piece.bounds.right - piece.bounds.left,
  );
}

function largestFor(pieces: readonly Piece[], wishes: LayoutWishes): number {
  for (let mm = (wishes.stickerMm ?? 0) - 1; mm > STICKER_RANGE_MM.min; mm--) {
    const fits = typeof layoutOf(pieces, { ...wishes, stickerMm: mm }) !== 'string';
    if (fits || !tooLarge(pieces, mm)) return mm;
  }
  return STICKER_RANGE_MM.min;
}
