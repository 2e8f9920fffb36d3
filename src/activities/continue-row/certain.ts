// Which rows of letters can be read one way only, so that what is missing is certain.
import { repeated } from './units.ts';

/** Where the empty places of a row are: the first of them, and how many. */
export interface Gap {
  readonly at: number;
  readonly length: number;
}

/** Groups the places of a row: those of one group hold the same figure when the row is read so. */
type Grouping = (place: number) => number;

/**
 * Every first empty place with which a row of `shown` letters of `units` (one for each attribute) and
 * `missing` empty places is certain; none where the row never is. In the middle, a whole unit stands on
 * either side of the gap.
 */
export function certainGaps(
  units: readonly string[],
  shown: number,
  missing: number,
  where: 'end' | 'middle',
): readonly number[] {
  const longest = Math.max(...units.map((unit) => unit.length));
  const inside = Math.max(0, shown - 2 * longest + 1);
  const places =
    where === 'end' ? [shown] : Array.from({ length: inside }, (_, index) => longest + index);
  return places.filter((at) =>
    units.every((unit) => isCertain(unit, shown, { at, length: missing })),
  );
}

function isCertain(unit: string, shown: number, gap: Gap): boolean {
  const row = repeated(unit, shown + gap.length);
  const after = shown - gap.at;
  const full = Math.floor(gap.at / unit.length) + Math.floor(after / unit.length);
  return full >= 2 && groupings(row.length).every((grouping) => !misleads(row, gap, grouping));
}

/** Repeats of every length, and rows that turn back about every place and between every two. */
function groupings(length: number): readonly Grouping[] {
  const periods = Array.from(
    { length: length - 1 },
    (_, index): Grouping =>
      (place) =>
        place % (index + 1),
  );
  const mirrors = Array.from(
    { length: 2 * length - 3 },
    (_, index): Grouping =>
      (place) => {
        const image = index + 1 - place;
        return image < 0 || image >= length ? place : Math.min(place, image);
      },
  );
  return [...periods, ...mirrors];
}

/** Whether what is shown bears the grouping out at least once, never speaks against it, and it leads elsewhere. */
function misleads(row: string, gap: Gap, grouping: Grouping): boolean {
  const isShown = (place: number) => place < gap.at || place >= gap.at + gap.length;
  const letters = new Map<number, string>();
  let isBorneOut = false;
  for (const [place, letter] of [...row].entries()) {
    if (!isShown(place)) continue;
    const before = letters.get(grouping(place));
    if (before !== undefined && before !== letter) return false;
    isBorneOut ||= before !== undefined;
    letters.set(grouping(place), letter);
  }
  const isElsewhere = [...row].some((letter, place) => {
    const led = isShown(place) ? letter : (letters.get(grouping(place)) ?? letter);
    return led !== letter;
  });
  return isBorneOut && isElsewhere;
}
