// Reads printed sheets of crossing-table back from pixels: what rows and columns are about, and what fits where they meet.
import { describe, expect, test } from 'vitest';
import type { Figure } from '../../src/figures/index.ts';
import { testSeed } from '../seed.ts';
import { type Bounds, inReadingOrder, type Thing, tasksOf } from './boxes.ts';
import { isOneForm, kindsOf, lookAt } from './looks.ts';
import {
  FROM_BOTH_SIDES,
  type PrintedSheet,
  printSheets,
  sheetsForHands,
} from './printed-sheets.ts';
import type { Raster } from './raster.ts';

const STEPS = 15;
const DPI = 100;

interface Printed {
  readonly rows: readonly (readonly (Figure | null)[])[];
  readonly loose: readonly Figure[];
}

describe('crossing-table', () => {
  test.each(FROM_BOTH_SIDES)(
    'printed tables of every step are filled, by their pixels alone, in one way, that of the key, %s',
    async (_, side) => {
      const seed = testSeed('crossing-table read back');
      for (const sheet of await printSheets(
        sheetsForHands('crossing-table', STEPS, 2, seed, side),
        DPI,
      )) {
        const keys = sheet.tasks.map(({ printed, answer }) => {
          const { loose } = printed as Printed;
          const places = (answer as { figures: Figure[] }).figures.map((figure) =>
            loose.findIndex(({ form, colour }) => form === figure.form && colour === figure.colour),
          );
          return [places];
        });
        expect(readAnswers(sheet), JSON.stringify(sheet.wanted)).toEqual(keys);
      }
    },
  );
});

/** What a figure shows, or a head, which shows one of them: the number of its form, its colour. */
interface Traits {
  readonly form?: number | undefined;
  readonly colour?: string | undefined;
}

/** What is known of a row or column: what its head shows, if it has one, and the figures in it. */
type Line = readonly Traits[];

interface Table {
  readonly rows: readonly Line[];
  readonly columns: readonly Line[];
  /** Row and column of each, in reading order. */
  readonly empty: readonly (readonly [number, number])[];
  readonly loose: readonly Traits[];
}

/** For each task all ways to fill its table, each with the place of what goes into each empty cell. */
function readAnswers({ raster, tasks }: PrintedSheet): number[][][] {
  return tasksOf(raster).map((things, index) => {
    const printed = tasks[index]?.printed as Printed | undefined;
    const table = readTable(
      raster,
      things,
      printed?.rows.length ?? 0,
      printed?.rows[0]?.length ?? 0,
    );
    return [...filled(table, 'form', 'colour'), ...filled(table, 'colour', 'form')];
  });
}

function readTable(
  raster: Raster,
  things: readonly Thing[],
  rowCount: number,
  columnCount: number,
): Table {
  const [table] = things.toSorted((one, other) => other.bottom - other.top - one.bottom + one.top);
  if (!table) throw new Error('no table');
  const others = inReadingOrder(things.filter((thing) => thing !== table));
  const loose = others.filter(({ top }) => top >= table.bottom);
  const above = others.filter(({ bottom }) => bottom <= table.top);
  const beside = others.filter((thing) => !loose.includes(thing) && !above.includes(thing));

  const shown = [...table.inside, ...loose, ...above, ...beside];
  // A head that shows a form is a frame with the form inside; one that shows a colour is painted all over.
  const looks = shown.map((thing) => lookAt(raster, thing.inside[0] ?? thing));
  const forms = kindsOf(looks, isOneForm);
  const traits = (thing: Thing): Traits => {
    const place = shown.indexOf(thing);
    const [form, colour] = [forms[place], looks[place]?.colour];
    if (thing.inside.length > 0) return { form };
    return above.includes(thing) || beside.includes(thing) ? { colour } : { form, colour };
  };

  const rowOf = ({ top, bottom }: Bounds) =>
    Math.floor((((top + bottom) / 2 - table.top) / (table.bottom - table.top)) * rowCount);
  const columnOf = ({ left, right }: Bounds) =>
    Math.floor((((left + right) / 2 - table.left) / (table.right - table.left)) * columnCount);
  const linesBy = (count: number, heads: readonly Thing[], lineOf: (bounds: Bounds) => number) =>
    Array.from({ length: count }, (_, line) =>
      [...heads, ...table.inside].filter((thing) => lineOf(thing) === line).map(traits),
    );
  const cells = Array.from({ length: rowCount * columnCount }, (_, cell) => {
    return [Math.floor(cell / columnCount), cell % columnCount] as const;
  });
  return {
    rows: linesBy(rowCount, beside, rowOf),
    columns: linesBy(columnCount, above, columnOf),
    empty: cells.filter(
      ([row, column]) =>
        !table.inside.some((thing) => rowOf(thing) === row && columnOf(thing) === column),
    ),
    loose: loose.map(traits),
  };
}

/** The table filled as it must be if its rows are about one trait and its columns about the other; none: they are not. */
function filled(
  { rows, columns, empty, loose }: Table,
  byRow: keyof Traits,
  byColumn: keyof Traits,
): number[][] {
  const [rowValues, columnValues] = [sharedBy(rows, byRow), sharedBy(columns, byColumn)];
  if (!rowValues || !columnValues) return [];
  const places = empty.map(([row, column]) =>
    loose.findIndex(
      (one) => one[byRow] === rowValues[row] && one[byColumn] === columnValues[column],
    ),
  );
  return [places];
}

/** What all that is known of each line has in common; undefined: some line does not have just one. */
function sharedBy(lines: readonly Line[], trait: keyof Traits) {
  const values = lines.map((line) => [...new Set(line.map((one) => one[trait]))]);
  const isOne = values.every((ones) => ones.length === 1 && ones[0] !== undefined);
  return isOne ? values.map(([one]) => one) : undefined;
}
