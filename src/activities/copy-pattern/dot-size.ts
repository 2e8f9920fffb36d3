// How wide dots are printed, and the cell in which a figure comes out as wide as wanted.
import { pathBounds } from '../../base/index.ts';
import { type Figure, outlineOf } from '../../figures/index.ts';
import { OUTLINE_MM } from '../../page/index.ts';
import type { Reading } from './reading.ts';

/** A dot drawn freely leaves room about it, so that it lies clearly in its cell. */
const DRAWN_SHARE = 0.5;
/** A dot that is coloured in leaves as much between dots as stickers do. */
const COLOURED_SHARE = 0.8;

/** Diameter in mm of a dot in cells of the given side. */
export function dotMm({ response, stickerMm, hasCircles }: Reading, cellMm: number): number {
  if (response === 'sticker') return stickerMm;
  return cellMm * (hasCircles ? COLOURED_SHARE : DRAWN_SHARE);
}

/** The side of the cell in which a circle or square is as wide as wanted, ink line included. */
export function cellForWidth({ form = 'circle', colour }: Figure, widthMm: number): number {
  const { left, right } = pathBounds(outlineOf({ form }).path);
  const lineMm = colour === undefined ? 0 : OUTLINE_MM;
  return (widthMm - lineMm) / (right - left) + lineMm;
}
