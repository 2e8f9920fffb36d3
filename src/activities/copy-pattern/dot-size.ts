// How wide dots are printed, and the cell in which a figure comes out as wide as wanted.
import { pathBounds } from '../../base/index.ts';
import { type Figure, formOf, isLetter, isNumeral, outlineOf } from '../../figures/index.ts';
import { stickerCellMm } from '../placing.ts';
import type { Reading } from './reading.ts';

/** A dot drawn freely leaves room about it, so that it lies clearly in its cell. */
const DRAWN_SHARE = 0.5;
/** Other figures have their own edges, and less room about them would crowd the cell. */
const DRAWN_FIGURE_SHARE = 0.75;
/** A dot that is coloured in leaves as much between dots as stickers do. */
const COLOURED_SHARE = 0.8;

/** Diameter in mm of a dot in cells of the given side. */
export function dotMm({ response, stickerMm, hasCircles }: Reading, cellMm: number): number {
  if (response === 'sticker') return stickerMm;
  return cellMm * (hasCircles ? COLOURED_SHARE : DRAWN_SHARE);
}

/** The side of the cell in which a circle or square is as wide as wanted, ink line included. */
export function cellForWidth(figure: Figure, widthMm: number): number {
  if (figure.colour !== undefined) return stickerCellMm(figure, widthMm);
  const { left, right } = pathBounds(outlineOf({ form: formOf(figure) }).path);
  return widthMm / (right - left);
}

/** The side of the cell of a figure that is drawn, which leaves room about it; letters have that in themselves. */
export function drawnCellMm(figure: Figure, cellMm: number): number {
  const form = formOf(figure);
  return isLetter(form) || isNumeral(form) ? cellMm : DRAWN_FIGURE_SHARE * cellMm;
}
