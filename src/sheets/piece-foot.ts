// A short line at the foot of a piece that could pass for another one when it is turned.
import type { Piece } from '../activities/index.ts';
import { type Figure, formOf, isPicture, isShape } from '../figures/index.ts';
import { type Area, type Group, group, line, QUIET_INK } from '../page/index.ts';

/** In mm; between the figure, which stands clear of the edge by 1.5 mm, and the line to cut along. */
const UP_MM = 1;
const WIDTH_MM = 0.4;
/** Its length, as a share of the piece's. */
const SHARE = 0.5;

/** Whether it must be told which side of these pieces is down. */
export function needFeet(pieces: readonly Piece[]): boolean {
  return pieces.some(({ figures }) => figures.length > 1 || figures.some(changesWhenTurned));
}

/** Directions, letters, numerals, signs, dots and patterns; shapes and pictures stay what they are. */
function changesWhenTurned(figure: Figure): boolean {
  const form = formOf(figure);
  const { turn, fill = 'solid' } = figure;
  const isPattern = fill !== 'solid' && fill !== 'outline';
  return turn !== undefined || form === 'arrow' || isPattern || !(isShape(form) || isPicture(form));
}

export function pieceFoot({ left, top, width, height }: Area): Group {
  const from = left + ((1 - SHARE) * width) / 2;
  const y = top + height - UP_MM;
  const stroke = { colour: QUIET_INK, widthMm: WIDTH_MM, ends: 'square' } as const;
  return group('piece-foot', [line(from, y, from + SHARE * width, y, stroke)]);
}
