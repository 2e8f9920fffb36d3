// Makes of a small square of pixels a picture of few flat colours, always the same one of the same pixels.
import tracer from 'imagetracerjs';
import { checkOwnPicture, OWN_UNITS, type OwnPicture } from '../../figures/index.ts';
import {
  type Cells,
  NONE,
  smoothed,
  withoutCrumbs,
  withoutGround,
  withoutSpecks,
} from './cells.ts';

/** Pixels along each side of what is simplified. */
export const SIDE = 128;

export const CROPS = ['circle', 'square'] as const;
export type Crop = (typeof CROPS)[number];

export interface SimplifyWishes {
  readonly crop: Crop;
  /** How many colours at the most, 2 to 6. */
  readonly colours: number;
  /** Whether what lies round the thing itself is taken away. */
  readonly cutOut: boolean;
}

/** `one-colour`: there is nothing to see; `too-fine`: however coarsely it is traced, no picture comes of it. */
export type Simplified =
  | { readonly picture: OwnPicture; readonly groundStays: boolean }
  | { readonly fault: 'one-colour' | 'too-fine' };

/** A colour along so much of the edge belongs to the ground. */
const GROUND_SHARE = 0.12;
/** Less than this share of the square is no thing any more; then the ground stays. */
const LEAST_LEFT = 0.06;
const CRUMB_SHARE = 0.02;
/** From fine to coarse: specks in cells, and how far lines may be off, in squared cells. */
const LEVELS = [
  { speck: 24, off: 0.4 },
  { speck: 40, off: 0.9 },
  { speck: 70, off: 2.5 },
  { speck: 120, off: 5 },
  { speck: 250, off: 10 },
] as const;
/** Colours nearer than this in red, green and blue together are one. */
const LEAST_APART = 40;
/** A turn by more than this, in degrees, is a corner; by less it is part of a round line. */
const CORNER_DEG = 50;
/** Share of the cell that the picture fills. */
const FILLS = 0.94;

/** `pixels`: red, green, blue and opacity of `SIDE` times `SIDE` pixels, row by row. */
export function simplified(pixels: Uint8ClampedArray, wishes: SimplifyWishes): Simplified {
  const flat = onWhite(pixels);
  const seeds = seedsOf(flat, wishes);
  if (seeds.length < 2) return { fault: 'one-colour' };
  const { cells, fills } = quantised(flat, seeds, wishes);
  const cut = wishes.cutOut ? withoutGround(cells, GROUND_SHARE) : cells;
  const groundStays = areaOf(cut) < LEAST_LEFT * SIDE * SIDE;
  const shown = groundStays ? cells : cut;
  for (const { speck, off } of LEVELS) {
    const picture = traced(shown, fills, speck, off);
    // What a file could not hold is traced anew, more coarsely.
    if (picture && checkOwnPicture(picture, 'picture').ok) {
      return { picture, groundStays: wishes.cutOut && groundStays };
    }
  }
  return { fault: 'too-fine' };
}

type Colour = readonly [red: number, green: number, blue: number];

/** Opaque pixels, as they look on paper. */
function onWhite(pixels: Uint8ClampedArray): Uint8ClampedArray {
  return pixels.map((value, index) => {
    if (index % 4 === 3) return 255;
    const opacity = (pixels[index - (index % 4) + 3] ?? 255) / 255;
    return Math.round(255 + opacity * (value - 255));
  });
}

function isInside(cell: number, crop: Crop): boolean {
  if (crop === 'square') return true;
  const [x, y] = [(cell % SIDE) + 0.5 - SIDE / 2, Math.floor(cell / SIDE) + 0.5 - SIDE / 2];
  return x * x + y * y <= (SIDE / 2) ** 2;
}

function colourAt(pixels: Uint8ClampedArray, cell: number): Colour {
  return [pixels[4 * cell] ?? 0, pixels[4 * cell + 1] ?? 0, pixels[4 * cell + 2] ?? 0];
}

function apart(one: Colour, other: Colour): number {
  return one.reduce<number>((sum, value, index) => sum + Math.abs(value - (other[index] ?? 0)), 0);
}

/** Colours that are far from each other, the mean first: where the clusters begin. */
function seedsOf(pixels: Uint8ClampedArray, { crop, colours }: SimplifyWishes): readonly Colour[] {
  const all = [...new Array(SIDE * SIDE).keys()].filter((cell) => isInside(cell, crop));
  const seen = all.map((cell) => colourAt(pixels, cell));
  const mean = [0, 1, 2].map((part) =>
    Math.round(seen.reduce((sum, colour) => sum + (colour[part] ?? 0), 0) / seen.length),
  );
  const seeds: Colour[] = [[mean[0] ?? 0, mean[1] ?? 0, mean[2] ?? 0]];
  const nearest = seen.map((colour) => apart(colour, seeds[0] ?? colour));
  while (seeds.length <= colours) {
    // The farthest of all may be one odd pixel: the one that many are beyond is not.
    const far = [...nearest].sort((a, b) => b - a)[Math.floor(seen.length / 200)] ?? 0;
    if (far < LEAST_APART) break;
    const next = seen[nearest.indexOf(far)] ?? seen[0];
    if (next === undefined) break;
    seeds.push(next);
    for (const [index, colour] of seen.entries()) {
      nearest[index] = Math.min(nearest[index] ?? 0, apart(colour, next));
    }
  }
  // The mean began the search; where there are others it is none of the picture's own.
  return seeds.length > 2 ? seeds.slice(1) : seeds;
}

interface Quantised {
  readonly cells: Cells;
  readonly fills: readonly string[];
}

function quantised(
  pixels: Uint8ClampedArray,
  seeds: readonly Colour[],
  { crop }: SimplifyWishes,
): Quantised {
  const { array, palette } = tracer.colorquantization(
    { width: SIDE, height: SIDE, data: pixels },
    {
      pal: seeds.map(([r, g, b]) => ({ r, g, b, a: 255 })),
      colorquantcycles: 8,
      mincolorratio: 0,
      blurradius: 0,
    },
  );
  const colours = new Int16Array(SIDE * SIDE).map((_, cell) => {
    const row = array[Math.floor(cell / SIDE) + 1] ?? [];
    return isInside(cell, crop) ? (row[(cell % SIDE) + 1] ?? NONE) : NONE;
  });
  const cells = smoothed(smoothed({ side: SIDE, colours }));
  return { cells, fills: palette.map(({ r, g, b }) => `#${[r, g, b].map(hexOf).join('')}`) };
}

function hexOf(channel: number): string {
  return Math.round(channel).toString(16).padStart(2, '0');
}

function areaOf({ colours }: Cells): number {
  return colours.reduce((sum, colour) => sum + (colour === NONE ? 0 : 1), 0);
}

/** The colours laid over each other, each reaching under all that follow, so that no gap shows between them. */
function traced(
  all: Cells,
  fills: readonly string[],
  speck: number,
  off: number,
): OwnPicture | undefined {
  const cells = withoutCrumbs(withoutSpecks(withoutCrumbs(all, CRUMB_SHARE), speck), CRUMB_SHARE);
  const { colours } = cells;
  const counted = fills
    .map((fill, colour) => ({ fill, colour, area: colours.filter((one) => one === colour).length }))
    .filter(({ area }) => area > 0)
    .sort((one, other) => other.area - one.area || one.colour - other.colour);
  const place = placeOf(cells);
  const order = counted.map(({ colour }) => colour);
  const layers = counted.map(({ fill }, index) => {
    const isIn = (colour: number) => colour !== NONE && order.indexOf(colour) >= index;
    return {
      fill,
      paths: pathsOf(
        colours.map((one) => (isIn(one) ? 1 : 0)),
        off,
        place,
      ),
    };
  });
  const outline = (layers[0]?.paths ?? []).filter(({ isHole }) => !isHole).map(({ text }) => text);
  if (outline.length === 0) return undefined;
  const parts = layers.flatMap(({ fill, paths }) => {
    const text = paths.map((path) => path.text).join('');
    if (text === '') return [];
    return [
      paths.some(({ isHole }) => isHole) ? ([fill, text, 1] as const) : ([fill, text] as const),
    ];
  });
  return { outline: outline.join(''), parts };
}

/** From cells to thousandths of the picture's own cell, in the middle and as large as has room. */
function placeOf({ side, colours }: Cells): (x: number, y: number) => string {
  const inked = [...colours.keys()].filter((cell) => colours[cell] !== NONE);
  const columns = inked.map((cell) => cell % side);
  const rows = inked.map((cell) => Math.floor(cell / side));
  const ends = (values: readonly number[]) =>
    [
      values.reduce((least, value) => Math.min(least, value), side),
      values.reduce((most, value) => Math.max(most, value + 1), 0),
    ] as const;
  const [[left, right], [top, bottom]] = [ends(columns), ends(rows)];
  const scale = (FILLS * OWN_UNITS) / Math.max(right - left, bottom - top, 1);
  const within = (value: number) =>
    Math.max(-OWN_UNITS / 2, Math.min(OWN_UNITS / 2, Math.round(value * scale))) + 0;
  return (x, y) => `${within(x - (left + right) / 2)} ${within(y - (top + bottom) / 2)}`;
}

interface TracedPath {
  readonly text: string;
  readonly isHole: boolean;
}

function pathsOf(
  mask: Int16Array,
  off: number,
  place: (x: number, y: number) => string,
): readonly TracedPath[] {
  const blank = new Array<number>(SIDE + 2).fill(0);
  const rows = Array.from({ length: SIDE }, (_, row) => [
    0,
    ...mask.slice(row * SIDE, (row + 1) * SIDE),
    0,
  ]);
  const layer = tracer.layeringstep({ array: [blank, ...rows, blank] }, 1);
  const nodes = tracer.internodes(tracer.pathscan(layer, 6), { rightangleenhance: false });
  return tracer.batchtracepaths(nodes, off, off).flatMap(({ segments, isholepath }) => {
    const points = segments.flatMap(
      ({ type, x1, y1, x2, y2, x3 = 0, y3 = 0 }): readonly Point[] => {
        const middle: Point = [(x1 + 2 * x2 + x3) / 4, (y1 + 2 * y2 + y3) / 4];
        return type === 'L' ? [[x1, y1]] : [[x1, y1], middle];
      },
    );
    return points.length < 3 ? [] : [{ text: roundedText(points, place), isHole: isholepath }];
  });
}

type Point = readonly [x: number, y: number];

/** A closed line from middle to middle of the sides: round past each point, but at corners through it. */
function roundedText(points: readonly Point[], place: (x: number, y: number) => string): string {
  const at = (index: number) => points[(index + points.length) % points.length] ?? ORIGIN;
  const middle = (index: number): string => {
    const [[x, y], [nextX, nextY]] = [at(index), at(index + 1)];
    return place((x + nextX) / 2, (y + nextY) / 2);
  };
  const steps = points.map((point, index) => {
    const isCorner = turnDeg(at(index - 1), point, at(index + 1)) > CORNER_DEG;
    return isCorner
      ? `L${place(...point)}L${middle(index)}`
      : `Q${place(...point)} ${middle(index)}`;
  });
  return `M${middle(-1)}${steps.join('')}Z`;
}

const ORIGIN: Point = [0, 0];

function turnDeg([fromX, fromY]: Point, [x, y]: Point, [toX, toY]: Point): number {
  const turn = Math.atan2(toY - y, toX - x) - Math.atan2(y - fromY, x - fromX);
  const degrees = Math.abs((turn * 180) / Math.PI);
  return Math.min(degrees, 360 - degrees);
}
