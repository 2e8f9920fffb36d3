// Which figure stands where in the given part, so that a shifted or turned copy of it is never the mirror image.
import type { Random } from '../../base/index.ts';
import { type Figure, sameFigure } from '../../figures/index.ts';
import { mirrored } from './generate-kinds.ts';
import { isChosen, type MirrorValues } from './task.ts';

/** For each place, row by row, the number of a kind, or -1 for nothing. */
export type Pattern = readonly number[];

export interface Grid {
  readonly rows: number;
  readonly columns: number;
}

/** What each kind becomes in an upright mirror and in a level one: its number, or one of its own from 100. */
export interface Images {
  readonly upright: readonly number[];
  readonly level: readonly number[];
}

/** Kinds that no mirror changes. */
const UNCHANGED: Images = { upright: [0, 1, 2, 3], level: [0, 1, 2, 3] };
/** So many patterns are drawn; after that one is looked for place by place. */
const DRAWS = 40;

export type Wanted = Pick<
  MirrorValues,
  'axis' | 'deep' | 'along' | 'elements' | 'kinds' | 'response' | 'wrong'
>;

/** Rows and columns of the given part. */
export function gridOf({ axis, deep, along }: Wanted): Grid {
  return axis === 'level' ? { rows: deep, columns: along } : { rows: along, columns: deep };
}

export function imagesOf(kinds: readonly Figure[]): Images {
  const imagesIn = (line: 'upright' | 'level') =>
    kinds.map((kind, index) => {
      const image = mirrored(kind, line);
      const number = kinds.findIndex((other) => sameFigure(other, image));
      return number < 0 ? 100 + index : number;
    });
  return { upright: imagesIn('upright'), level: imagesIn('level') };
}

/** A pattern of the wanted kind; none where there is none. */
export function findPattern(
  wanted: Wanted,
  random: Random,
  images: Images = UNCHANGED,
): Pattern | undefined {
  const grid = gridOf(wanted);
  const size = grid.rows * grid.columns;
  if (wanted.elements > size || wanted.kinds > wanted.elements) return undefined;
  for (let draw = 0; draw < DRAWS; draw++) {
    const pattern = drawPattern(wanted, size, random);
    if (isTelling(pattern, grid, wanted, images)) return pattern;
  }
  return searchPattern([], wanted, size, (pattern) => isTelling(pattern, grid, wanted, images));
}

function drawPattern({ elements, kinds }: Wanted, size: number, random: Random): Pattern {
  const dealt = Array.from({ length: elements }, (_, index) =>
    index < kinds ? index : random.int(0, kinds - 1),
  );
  const empty = Array.from({ length: size - elements }, () => -1);
  return random.shuffle([...dealt, ...empty]);
}

/** The first pattern in order that will do; the search is short, since nearly every pattern does. */
function searchPattern(
  begun: Pattern,
  wanted: Wanted,
  size: number,
  isGood: (pattern: Pattern) => boolean,
): Pattern | undefined {
  const used = begun.filter((kind) => kind >= 0);
  const left = wanted.elements - used.length;
  const missing = wanted.kinds - new Set(used).size;
  if (left < 0 || missing > left || left > size - begun.length) return undefined;
  if (begun.length === size) return isGood(begun) ? begun : undefined;
  for (let kind = wanted.kinds - 1; kind >= -1; kind--) {
    const found = searchPattern([...begun, kind], wanted, size, isGood);
    if (found) return found;
  }
  return undefined;
}

/**
 * Whether in every missing part the mirror image is neither the part shifted there nor the part turned half round.
 * Where a turned half is offered as well it must not look like a shifted one.
 */
function isTelling(
  pattern: Pattern,
  grid: Grid,
  { axis, response, wrong }: Wanted,
  images: Images,
): boolean {
  const at = (row: number, column: number) => pattern[row * grid.columns + column] ?? -1;
  const { rows, columns } = grid;
  const make = (take: (row: number, column: number) => number): Pattern =>
    pattern.map((_, place) => take(Math.floor(place / columns), place % columns));
  const through = (numbers: readonly number[], kind: number) => numbers[kind] ?? kind;
  const across = make((row, column) => through(images.upright, at(row, columns - 1 - column)));
  const down = make((row, column) => through(images.level, at(rows - 1 - row, column)));
  const moved = make((row, column) => at(rows - 1 - row, columns - 1 - column));
  const turned = moved.map((kind) => through(images.level, through(images.upright, kind)));
  const differs = (one: Pattern, other: Pattern) =>
    one.some((kind, place) => kind !== other[place]);
  const isClear = (image: Pattern) =>
    [pattern, moved, turned].every((copy) => differs(image, copy));
  if (axis === 'both') return isClear(across) && isClear(down) && differs(turned, pattern);
  const isOffered = isChosen(response) && (wrong === 'turned' || wrong === 'copied');
  const isOneHanded = !isOffered || differs(moved, pattern);
  return isOneHanded && isClear(axis === 'upright' ? across : down);
}
