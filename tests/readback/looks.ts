// How a figure looks, from pixels alone: its filled silhouette, its size and its colour.
import { hexOfPixel } from './boxes.ts';
import { isInked, pixelAt, type Raster } from './raster.ts';

export interface Region {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export interface Look {
  /** Cells, as many rows as columns, over the bounds of the figure: what lies inside its outer edge. */
  readonly silhouette: readonly boolean[];
  readonly width: number;
  readonly height: number;
  /** How much of the silhouette is inked: 1 for a filled figure, little for an outline. */
  readonly inkShare: number;
  /** The commonest colour of what is inked: that of the filling, or of the line where nothing fills it. */
  readonly colour: string;
}

const GRID = 24;
/** Nearer silhouettes are one form that stands one way: at 100 dpi one form stays below 0.09, two differ by 0.24. */
export const ONE_FORM = 0.15;
/** Figures whose lengths are nearer than this ratio are one size: sizes that differ do so by 1.3 or more. */
const ONE_SIZE = 1.12;

/** The look of what is inked in a region; `isWithin` can narrow the region down, `grid` is the silhouette's side. */
export function lookAt(
  raster: Raster,
  region: Region,
  isWithin: (x: number, y: number) => boolean = () => true,
  grid = GRID,
): Look {
  const inked: [number, number][] = [];
  const colours = new Map<string, number>();
  for (let y = region.top; y <= region.bottom; y++) {
    for (let x = region.left; x <= region.right; x++) {
      const pixel = pixelAt(raster, x, y);
      if (!isWithin(x, y) || !isInked(pixel)) continue;
      inked.push([x, y]);
      const hex = hexOfPixel(pixel);
      colours.set(hex, (colours.get(hex) ?? 0) + 1);
    }
  }
  const [xs, ys] = [inked.map(([x]) => x), inked.map(([, y]) => y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const [width, height] = [Math.max(...xs) - left + 1, Math.max(...ys) - top + 1];
  const solid = filledOutside(inked, left, top, width, height);
  const silhouette = Array.from({ length: grid * grid }, (_, cell) => {
    const x = Math.floor((((cell % grid) + 0.5) * width) / grid);
    const y = Math.floor(((Math.floor(cell / grid) + 0.5) * height) / grid);
    return solid[y * width + x] === 1;
  });
  const [commonest] = [...colours].sort(([, one], [, other]) => other - one);
  const within = solid.reduce((sum, inside) => sum + inside, 0);
  return {
    silhouette,
    width,
    height,
    inkShare: inked.length / within,
    colour: commonest?.[0] ?? '',
  };
}

/** 1 for every pixel that cannot be reached from the edge without crossing ink. */
function filledOutside(
  inked: readonly (readonly [number, number])[],
  left: number,
  top: number,
  width: number,
  height: number,
) {
  const solid = new Uint8Array(width * height).fill(1);
  const blocked = new Uint8Array(width * height);
  for (const [x, y] of inked) blocked[(y - top) * width + (x - left)] = 1;
  const stack: number[] = [];
  const reach = (x: number, y: number) => {
    const at = y * width + x;
    if (x < 0 || y < 0 || x >= width || y >= height || blocked[at] === 1 || solid[at] === 0) return;
    solid[at] = 0;
    stack.push(at);
  };
  for (let x = 0; x < width; x++) for (const y of [0, height - 1]) reach(x, y);
  for (let y = 0; y < height; y++) for (const x of [0, width - 1]) reach(x, y);
  for (let at = stack.pop(); at !== undefined; at = stack.pop()) {
    const [x, y] = [at % width, Math.floor(at / width)];
    for (const [nx, ny] of [
      [x + 1, y],
      [x - 1, y],
      [x, y + 1],
      [x, y - 1],
    ] as const)
      reach(nx, ny);
  }
  return solid;
}

/** Share of the grid in which two silhouettes differ, their proportions included. */
export function silhouetteDifference(one: Look, other: Look): number {
  const differing =
    one.silhouette.filter((inside, cell) => inside !== other.silhouette[cell]).length /
    one.silhouette.length;
  const proportions = Math.abs(Math.log((one.width * other.height) / (one.height * other.width)));
  return differing + 0.5 * proportions;
}

export function isOneForm(one: Look, other: Look): boolean {
  return silhouetteDifference(one, other) < ONE_FORM;
}

/** Whether two filled figures look alike in form, colour and size. */
export function looksAlike(one: Look, other: Look): boolean {
  return one.colour === other.colour && isOneForm(one, other) && isOneSize(one, other);
}

export function isOneSize(one: Look, other: Look): boolean {
  const ratio = Math.sqrt((one.width * one.height) / (other.width * other.height));
  return Math.max(ratio, 1 / ratio) < ONE_SIZE;
}

/** For each item the place of the first that is alike: what is alike has one number. */
export function kindsOf<T>(items: readonly T[], isAlike: (one: T, other: T) => boolean): number[] {
  return items.map((item) => items.findIndex((other) => isAlike(other, item)));
}
