// All ways to read a field: as one that repeats, as one that mirrors or turns into itself, and by sets in its rows.

/** The values of one attribute, row by row; `null` in the hole. */
export type Strand = readonly (string | null)[];

/** For each place the group of places that a reading says hold the same. */
type Groups = readonly number[];

const known = new Map<string, readonly Groups[]>();

/**
 * The values that readings put into the place `hole`: those of every reading that at least two shown places
 * bear out and that none speaks against, wherever in the field.
 */
export function readingsOf(strand: Strand, columns: number, hole: number): readonly string[] {
  const shown = new Set(strand.filter((value) => value !== null));
  // Where all are alike, every reading says the same.
  if (shown.size === 1) return [...shown];
  const all = groupingsOf(strand, columns);
  const values = all.map((groups) => valueBy(strand, groups, hole));
  return [...new Set(values)].filter((value) => value !== undefined);
}

/**
 * The shown places that no reading accounts for, by another place that holds the same: figures that break the
 * pattern.
 */
export function unaccounted(strand: Strand, columns: number): readonly number[] {
  const places = strand.flatMap((value, place) => (value === null ? [] : [place]));
  const counting = groupingsOf(strand, columns).filter((groups) => heldBy(strand, groups));
  const left = places.filter((place) =>
    counting.every(
      (groups) => !places.some((other) => other !== place && groups[other] === groups[place]),
    ),
  );
  const holes = strand.flatMap((value, place) => (value === null ? [place] : []));
  const areSets = holes.some((hole) => setReadingOf(strand, columns, hole).length > 0);
  return areSets ? [] : left;
}

function groupingsOf(strand: Strand, columns: number): readonly Groups[] {
  const key = `${strand.length} ${columns}`;
  const all = known.get(key) ?? groupings(strand.length / columns, columns);
  known.set(key, all);
  return all;
}

function valueBy(strand: Strand, groups: Groups, hole: number): string | undefined {
  return heldBy(strand, groups)?.get(groups[hole] ?? -1);
}

/** What each group holds, where something bears the reading out and nothing speaks against it. */
function heldBy(strand: Strand, groups: Groups): ReadonlyMap<number, string> | undefined {
  const held = new Map<number, string>();
  let isBorneOut = false;
  for (const [place, value] of strand.entries()) {
    const group = groups[place];
    if (value === null || group === undefined) continue;
    const before = held.get(group);
    if (before !== undefined && before !== value) return undefined;
    if (before !== undefined) isBorneOut = true;
    held.set(group, value);
  }
  return isBorneOut ? held : undefined;
}

function groupings(rows: number, columns: number): readonly Groups[] {
  return [...shifts(rows, columns), ...symmetries(rows, columns)];
}

/** Everything is the same again so many rows further down and so many columns further along or back. */
function shifts(rows: number, columns: number): readonly Groups[] {
  const found: Groups[] = [];
  for (let down = 0; down < rows; down++) {
    for (let along = down === 0 ? 1 : 1 - columns; along < columns; along++) {
      found.push(
        groupsBy(rows, columns, (row, column) => firstOf(row, column, down, along, columns)),
      );
    }
  }
  return found;
}

/** The place from which one comes by shifts alone. */
function firstOf(row: number, column: number, down: number, along: number, columns: number) {
  let [r, c] = [row, column];
  while (r - down >= 0 && c - along >= 0 && c - along < columns) {
    r -= down;
    c -= along;
  }
  return r * columns + c;
}

type Move = (row: number, column: number) => readonly [number, number];

/** Left and right, above and below, half turns; in a square about its diagonals too, and quarter turns. */
function symmetries(rows: number, columns: number): readonly Groups[] {
  const [bottom, right] = [rows - 1, columns - 1];
  const any: readonly Move[] = [
    (row, column) => [row, right - column],
    (row, column) => [bottom - row, column],
    (row, column) => [bottom - row, right - column],
  ];
  const square: readonly Move[] = [
    (row, column) => [column, row],
    (row, column) => [right - column, bottom - row],
    (row, column) => [column, bottom - row],
  ];
  return [...any, ...(rows === columns ? square : [])].map((move) =>
    groupsBy(rows, columns, (row, column) => leastOf(row, column, move, columns)),
  );
}

/** The first place in reading order that moves bring here; four quarter turns come round. */
function leastOf(row: number, column: number, move: Move, columns: number): number {
  let [r, c] = [row, column];
  let least = r * columns + c;
  for (let turn = 0; turn < 3; turn++) {
    [r, c] = move(r, c);
    least = Math.min(least, r * columns + c);
  }
  return least;
}

function groupsBy(
  rows: number,
  columns: number,
  groupOf: (row: number, column: number) => number,
): Groups {
  return Array.from({ length: rows * columns }, (_, place) =>
    groupOf(Math.floor(place / columns), place % columns),
  );
}

/** What is left for the hole where every row, or every column, holds the same values once each. */
export function setReadingOf(strand: Strand, columns: number, hole: number): readonly string[] {
  const rows = Array.from({ length: strand.length / columns }, (_, row) =>
    strand.slice(row * columns, (row + 1) * columns),
  );
  const downward = Array.from({ length: columns }, (_, column) =>
    rows.map((row) => row[column] ?? null),
  );
  const found = [
    missingFrom(rows, Math.floor(hole / columns)),
    missingFrom(downward, hole % columns),
  ];
  return found.filter((value) => value !== undefined);
}

/** The one value that the line lacks of those that the others have, once each. */
function missingFrom(lines: readonly Strand[], at: number): string | undefined {
  const full = lines.filter((line) => !line.includes(null));
  const all = new Set(full[0]?.filter((value) => value !== null));
  const areSets = lines.every((line) => {
    const held = line.filter((value) => value !== null);
    return new Set(held).size === held.length && held.every((value) => all.has(value));
  });
  if (full.length < 2 || !areSets || all.size !== lines[at]?.length) return undefined;
  const missing = [...all].filter((value) => !lines[at]?.includes(value));
  return missing.length === 1 ? missing[0] : undefined;
}
