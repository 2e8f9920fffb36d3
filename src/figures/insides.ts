// How different two pictures look inside: the share of what they cover whose colours are told apart, best aligned.
import { type Hex, seenApart } from '../palette/index.ts';
import { bestAgreement, LEVEL, windowsOf } from './alignment.ts';
import { type FormId, isPicture, type Picture } from './form-names.ts';
import { isOwnPicture, type OwnForm } from './own-forms.ts';
import { pictureOutline, pictureParts } from './pictures.ts';
import { GRID, isSet, rasterOf, type Window } from './raster.ts';

/**
 * Least share of insides in which two pictures must differ to be told apart fairly where their outlines do not tell: as
 * much of what is seen as of outlines (`SHAPE_FLOOR`). Above one photo cropped a little otherwise (0.06), one face in
 * another shirt (0.00) and a thing drawn larger (0.09); below two faces on other grounds (0.41). By eye, no source.
 */
export const INSIDE_FLOOR = 0.15;

/** Forgotten when this many pairs are known, so that a hostile file cannot fill the memory. */
const MOST_KNOWN = 2_000;
const PAPER: Hex = '#ffffff';
/** No picture has more, paper included. */
const MOST_COLOURS = 16;

/** The flat colours of a picture on the grid, row by row: places in its list of colours, 0 being paper. */
type Cells = Uint8Array;

interface Inside {
  readonly colours: readonly Hex[];
  /** As each of the windows of its outline shows it. */
  readonly views: readonly Cells[];
}

const insides = new Map<Picture, Inside>();
const shares = new Map<string, number>();

/**
 * Whether insides count for two forms: both are pictures, and one at least is of a family's own. Those that are always
 * there were chosen to differ in outline.
 */
export function haveInsides(one: FormId, other: FormId): boolean {
  return isPicture(one) && isPicture(other) && (isOwnPicture(one) || isOwnPicture(other));
}

/**
 * Share of the area that one picture or the other covers where their flat colours are told apart (`seenApart`), in the
 * way of seeing in which it is least; the second moved, scaled, mirrored and turned by quarters to agree best, as
 * outlines are. 0 (alike) to 1, rounded to 0.01, the same both ways round; 0 where insides do not count.
 */
export function insideShare(one: FormId, other: FormId): number {
  const [first, second] = [one, other].sort();
  if (first === undefined || second === undefined || first === second) return 0;
  if (!isPicture(first) || !isPicture(second) || !haveInsides(first, second)) return 0;
  const key = `${first} ${second}`;
  const share = shares.get(key) ?? measure(insideOf(first), insideOf(second));
  if (shares.size >= MOST_KNOWN) shares.clear();
  shares.set(key, share);
  return share;
}

function measure(one: Inside, other: Inside): number {
  const told = one.colours.map((colour) => other.colours.map((next) => seenApart(colour, next)));
  const bits = new Set((told[0]?.[0] ?? []).map((_, way) => bitsOf(told, way)));
  const ways = [...bits].map((text) => Uint8Array.from(text, Number));
  const agreement = (base: Cells, moved: Cells, moveX: number, moveY: number) =>
    likenessOf(countMeetings(base, moved, moveX, moveY), ways);
  const best = TURNINGS.map((turning) =>
    bestAgreement(one.views, other.views.map(turning), agreement),
  );
  return Math.round(100 * (1 - Math.max(...best))) / 100;
}

/**
 * A picture that a mirror changes in no more than this share of what it covers is the same on both sides to the eye, as
 * outlines are that share all but so much (`SAME_SHARE`).
 */
const MIRROR_SHARE = 0.05;

/** Whether a picture of a family's own is the same on both sides, in its outline and inside, however it is seen. */
export function isSameMirrored(form: OwnForm): boolean {
  const { colours, views } = insideOf(form);
  const cells = views[LEVEL] ?? new Uint8Array();
  const meetings = countMeetings(cells, mirrored(cells), 0, 0);
  const apart = colours.map((one) => colours.map((other) => seenApart(one, other).some(Boolean)));
  let [covered, told] = [0, 0];
  for (const [place, row] of apart.entries()) {
    for (const [other, isApart] of row.entries()) {
      const count = meetings[place * MOST_COLOURS + other] ?? 0;
      if (place + other > 0) covered += count;
      if (isApart) told += count;
    }
  }
  return told <= MIRROR_SHARE * covered;
}

/** For each colour of one picture and each of the other, whether they are told apart in a way of seeing: 1 or 0. */
function bitsOf(told: readonly (readonly (readonly boolean[])[])[], way: number): string {
  const rows = told.map((row) => row.map((apart) => (apart[way] ? '1' : '0')));
  return rows
    .map((row) => row.join('').padEnd(MOST_COLOURS, '0'))
    .join('')
    .padEnd(MOST_COLOURS ** 2, '0');
}

/** How many cells each colour of one picture has in common with each of the other, moved by whole cells. */
function countMeetings(base: Cells, moved: Cells, moveX: number, moveY: number): Uint16Array {
  const counts = new Uint16Array(MOST_COLOURS * MOST_COLOURS);
  const [left, right] = [Math.max(0, moveX), Math.min(GRID, GRID + moveX)];
  for (let row = 0; row < GRID; row++) {
    const from = row - moveY;
    const isRow = from >= 0 && from < GRID;
    for (let column = 0; column < GRID; column++) {
      const isOn = isRow && column >= left && column < right;
      const other = isOn ? (moved[from * GRID + column - moveX] as number) : 0;
      const pair = (base[row * GRID + column] as number) * MOST_COLOURS + other;
      counts[pair] = (counts[pair] as number) + 1;
    }
  }
  return counts;
}

/** The share of the cells that either covers which look alike in some way of seeing, the most of all ways. */
function likenessOf(meetings: Uint16Array, ways: readonly Uint8Array[]): number {
  let [covered, least] = [0, GRID * GRID];
  // Paper on paper, the first pair, is no part of either.
  for (let pair = 1; pair < meetings.length; pair++) covered += meetings[pair] as number;
  for (const way of ways) {
    let told = 0;
    for (let pair = 1; pair < meetings.length; pair++) {
      told += (meetings[pair] as number) * (way[pair] as number);
    }
    least = Math.min(least, told);
  }
  return 1 - least / covered;
}

function insideOf(picture: Picture): Inside {
  const known = insides.get(picture);
  if (known) return known;
  const parts = pictureParts(picture);
  const colours = [...new Set([PAPER, ...parts.map(({ fill }) => fill)])];
  if (colours.length > MOST_COLOURS) throw new Error(`figures › inside: too many in ${picture}`);
  const cellsIn = (window: Window): Cells => {
    const cells = new Uint8Array(GRID * GRID);
    for (const { fill, path, rule } of parts) {
      const raster = rasterOf({ path, rule }, window);
      cells.forEach((_, cell) => {
        if (isSet(raster, Math.floor(cell / GRID), cell % GRID))
          cells[cell] = colours.indexOf(fill);
      });
    }
    return cells;
  };
  const outline = { path: pictureOutline(picture), rule: 'nonzero' } as const;
  const views = windowsOf(outline).map(cellsIn);
  const inside = { colours, views };
  if (insides.size >= MOST_KNOWN / 10) insides.clear();
  insides.set(picture, inside);
  return inside;
}

type Turning = (cells: Cells) => Cells;

const mirrored: Turning = (cells) =>
  cells.map((_, cell) => cells[cell + GRID - 1 - 2 * (cell % GRID)] ?? 0);

const turned: Turning = (cells) =>
  cells.map((_, cell) => cells[(GRID - 1 - (cell % GRID)) * GRID + Math.floor(cell / GRID)] ?? 0);

/** Every quarter turn, plain and mirrored. */
const TURNINGS: readonly Turning[] = [0, 1, 2, 3].flatMap((quarters) => {
  const turning: Turning = (cells) =>
    Array.from({ length: quarters }).reduce<Cells>((view) => turned(view), cells);
  return [turning, (cells: Cells) => turning(mirrored(cells))];
});
