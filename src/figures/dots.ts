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

/** The least `dotSize`: 1.2 mm in a cell of 20 mm, still seen at a glance; by eye. */
export const LEAST_DOT_SIZE = 0.5;

/** The most `dotSize` of a single dot: about a third of the cell; by eye. */
const MOST_SINGLE_DOT = 2.5;

/**
 * The most `dotSize` at which the dots keep a third of a dot of blank between them and stay in the cell at
 * every turn.
 */
export function mostDotSize(count: number, layout: DotLayout): number {
  const places = dotPlaces(count, layout);
  const reach = Math.max(...places.map(({ x, y }) => Math.hypot(x, y)));
  const gaps = places.flatMap((one, index) =>
    places.slice(index + 1).map((other) => Math.hypot(one.x - other.x, one.y - other.y)),
  );
  const within = Math.min((3 / 4) * Math.min(...gaps), 1 - 2 * reach) / DOT_SHARE;
  return Math.min(MOST_SINGLE_DOT, Math.floor(100 * within) / 100);
}

/** The dots as one path of separate circles. */
export function dotsOutline(count: number, layout: DotLayout, dotSize = 1): Path {
  const radius = (dotSize * DOT_SHARE) / 2;
  return dotPlaces(count, layout).flatMap(({ x, y }) => circlePath(x, y, radius));
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
