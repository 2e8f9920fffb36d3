// Where the dots of a quantity lie, in a cell of side 1 about (0, 0).
import {
  circlePath,
  compose,
  type Path,
  type Point,
  scaleBy,
  transformPoint,
  turnBy,
} from '../base/index.ts';
import { type DotLayout, type Figure, layoutOf } from './figure.ts';

/** The most dots that a figure shows. */
export const MOST_DOTS = 6;

/** Diameter of every dot in cell sides, the same for all counts and layouts: six fit in a row. */
export const DOT_SHARE = 0.125;

/** Distance of neighbours in a row. */
const ROW_PITCH = 0.175;

/** Spots of a die by count, in hundredths of the cell: columns and rows 24 from the middle. */
const DIE = [
  '0 0',
  '24 -24, -24 24',
  '24 -24, 0 0, -24 24',
  '-24 -24, 24 -24, -24 24, 24 24',
  '-24 -24, 24 -24, 0 0, -24 24, 24 24',
  '-24 -24, 24 -24, -24 0, 24 0, -24 24, 24 24',
].map(spotsFrom);

/**
 * Two to six spots without order, in hundredths of the cell: found by a search for places that are far
 * apart, not in line, centred, and unlike the die, each other and their own mirror images; then judged
 * by eye.
 */
const SCATTERED = {
  'scattered-1': [
    '-13 -28, 12 27',
    '-37 -19, 17 37, 8 -26',
    '-27 -31, 14 38, -12 22, 33 -21',
    '35 -2, 28 -28, -10 24, -35 21, -40 -8',
    '32 -19, -26 -31, 3 -38, -13 39, 13 33, -31 -1',
  ].map(spotsFrom),
  'scattered-2': [
    '-31 12, 30 -10',
    '35 15, 1 25, -29 -28',
    '-12 -25, -31 16, 21 35, 15 -39',
    '-31 -13, 26 -30, -39 10, 0 26, 35 22',
    '41 7, -35 22, 2 -17, 31 -23, -15 -37, -7 31',
  ].map(spotsFrom),
  'scattered-3': [
    '-16 -13, 15 14',
    '-1 16, 21 -36, -29 28',
    '12 -39, -13 39, 27 0, -34 18',
    '-18 -6, 40 11, 28 -16, -21 36, -31 -27',
    '-37 17, 8 -37, 19 -9, -14 -19, 13 39, 40 8',
  ].map(spotsFrom),
};

function spotsFrom(hundredths: string): readonly Point[] {
  return hundredths.split(', ').map((spot) => {
    const [x = 0, y = 0] = spot.split(' ').map((hundredth) => Number(hundredth) / 100);
    return { x, y };
  });
}

/** Where `count` dots (1 to 6) lie; one dot lies in the middle in every layout. */
export function dotPlaces(count: number, layout: DotLayout): readonly Point[] {
  const places = count === 1 ? DIE[0] : placesOf(count, layout);
  if (!places) throw new Error(`figures › dots: expected 1 to ${MOST_DOTS}, got ${count}`);
  return places;
}

/** The dots as one path of separate circles. */
export function dotsOutline(count: number, layout: DotLayout): Path {
  return dotPlaces(count, layout).flatMap(({ x, y }) => circlePath(x, y, DOT_SHARE / 2));
}

function placesOf(count: number, layout: DotLayout): readonly Point[] | undefined {
  if (layout === 'dice') return DIE[count - 1];
  if (layout === 'row') return count >= 1 && count <= MOST_DOTS ? rowPlaces(count) : undefined;
  return SCATTERED[layout][count - 2];
}

function rowPlaces(count: number): readonly Point[] {
  return Array.from({ length: count }, (_, index) => ({
    x: rounded((index - (count - 1) / 2) * ROW_PITCH),
    y: 0,
  }));
}

/** To a ten-thousandth of the cell, so that two ways to reckon a place give the same number. */
function rounded(share: number): number {
  return Math.round(share * 10_000) / 10_000;
}

/** Whether the dots of two figures lie in the same places, their turns and mirrorings done. */
export function liesAlike(one: Figure, other: Figure): boolean {
  const others = new Set(placeKeys(other));
  const places = placeKeys(one);
  return places.length === others.size && places.every((place) => others.has(place));
}

function placeKeys(figure: Figure): readonly string[] {
  const { count = 1, turn = 0, mirrored = false } = figure;
  const stance = compose(turnBy(turn), scaleBy(mirrored ? -1 : 1, 1));
  return dotPlaces(count, layoutOf(figure)).map(({ x, y }) => {
    const place = transformPoint(stance, x, y);
    return `${rounded(place.x) + 0} ${rounded(place.y) + 0}`;
  });
}
