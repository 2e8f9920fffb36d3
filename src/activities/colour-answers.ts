// What solvers find wrong where a colour alone is to answer: a sticker, a crayon, a counter.
import { type Told, told } from '../base/index.ts';
import { type Figure, sameFigure } from '../figures/index.ts';

/** A colour answers only where figures differ in nothing else: a red sticker is no red heart. */
export function colourFaults(figures: readonly Figure[]): readonly Told[] {
  const [first] = figures;
  const isColourAlone = figures.every(
    (figure) =>
      figure.colour !== undefined && sameFigure({ ...first, colour: figure.colour }, figure),
  );
  return isColourAlone ? [] : [told('faults', 'more-than-colour')];
}

/** Stickers to be laid out have a size; `stickerMm`: its diameter, where it is told. */
export function stickerFaults(stickerMm: number | undefined): readonly Told[] {
  return stickerMm === undefined ? [told('faults', 'sticker-size')] : [];
}
