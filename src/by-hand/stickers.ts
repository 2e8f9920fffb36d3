// Which figures are stuck on instead of drawn, and with how large a sticker.
import { STICKERS_SOLD_MM } from '../activities/index.ts';
import type { Bounds } from '../base/index.ts';
import { formOf } from '../figures/index.ts';
import type { ColourName } from '../palette/index.ts';
import type { Piece } from './piece.ts';

const SOLD_MM = STICKERS_SOLD_MM.map(Number);
/** A dot that is printed by less than this smaller takes the sticker all the same, in mm. */
const NEARLY_MM = 0.5;
/** Stickers that can be asked for, in mm: what a child can hold, what fits a page. */
export const STICKER_RANGE_MM = { min: 6, max: 40 } as const;

export interface Sticker {
  readonly colour: ColourName;
  readonly diameterMm: number;
}

/**
 * The sticker that a piece is made of; undefined: it is drawn. Dots of several sizes are drawn, since the
 * sizes are what is asked for. With `atHandMm`, stickers of that diameter are used for all dots.
 */
export function stickerFor(piece: Piece, atHandMm: number | undefined): Sticker | undefined {
  if (piece.kind !== 'figure' || piece.name !== undefined) return undefined;
  const { figure, bounds } = piece;
  const { colour, fill = 'solid', size } = figure;
  if (formOf(figure) !== 'circle' || colour === undefined || fill !== 'solid') return undefined;
  if (size !== undefined) return undefined;
  const diameterMm = atHandMm ?? soldFor(bounds);
  return diameterMm === undefined ? undefined : { colour, diameterMm };
}

function soldFor({ left, right }: Bounds): number | undefined {
  return SOLD_MM.filter((sold) => sold <= right - left + NEARLY_MM).pop();
}
