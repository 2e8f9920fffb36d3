// Reads printed sheets of missing-part back from pixels: the field, its hole, the repeats, the piece that they ask for.
import { describe, expect, test } from 'vitest';
import type { Figure } from '../../src/figures/index.ts';
import { testSeed } from '../seed.ts';
import { type Bounds, inReadingOrder, rowsOf, type Thing, tasksOf } from './boxes.ts';
import { isOneForm, kindsOf, lookAt } from './looks.ts';
import {
  FROM_BOTH_SIDES,
  type PrintedSheet,
  printSheets,
  sheetsForHands,
} from './printed-sheets.ts';
import type { Raster } from './raster.ts';

const STEPS = 10;
const DPI = 100;
const HOLLOW = 0.6;

interface Printed {
  readonly offered: readonly (readonly Figure[])[];
}

describe('missing-part', () => {
  test.each(FROM_BOTH_SIDES)(
    'printed fields of every step ask, by their pixels alone, for the piece of the key and for no other, %s',
    async (_, side) => {
      const seed = testSeed('missing-part read back');
      for (const sheet of await printSheets(
        sheetsForHands('missing-part', STEPS, 3, seed, side),
        DPI,
      )) {
        const keys = sheet.tasks.map(({ printed, answer }) => {
          const wanted = namesOf((answer as { figures: Figure[] }).figures);
          return (printed as Printed).offered.flatMap((piece, place) =>
            namesOf(piece) === wanted ? [place] : [],
          );
        });
        expect(readAnswers(sheet), JSON.stringify(sheet.wanted)).toEqual(keys);
      }
    },
  );
});

function namesOf(figures: readonly Figure[]): string {
  return figures.map(({ form, colour }) => `${colour} ${form}`).join();
}

/** What a figure is: the number of its form, its colour. */
type Traits = readonly [number, string];
/** Row by row; undefined: the hole. */
type Field = readonly (readonly (Traits | undefined)[])[];

/** For each task the places of the pieces that no repeat of the field speaks against. */
function readAnswers({ raster }: PrintedSheet): number[][] {
  return tasksOf(raster).map((task) => readTask(raster, task));
}

function readTask(raster: Raster, task: readonly Thing[]): number[] {
  const [frame, ...pieces] = task.toSorted((one, other) => other.inside.length - one.inside.length);
  if (!frame) return [];
  const shown = frame.inside.filter((area) => lookAt(raster, area).inkShare > HOLLOW);
  const inPieces = inReadingOrder(pieces).map(({ inside }) => inside);
  const looks = [...shown, ...inPieces.flat()].map((area) => lookAt(raster, area));
  const forms = kindsOf(looks, isOneForm);
  const traits = looks.map(({ colour }, place): Traits => [forms[place] ?? -1, colour]);
  const field = fieldOf(shown, traits);
  const holes = field.flatMap((row, down) =>
    row.flatMap((one, across) => (one ? [] : [{ down, across }])),
  );
  return inPieces.flatMap((inside, place) => {
    const from = shown.length + inPieces.slice(0, place).flat().length;
    const filled = field.map((row) => [...row]);
    holes.forEach(({ down, across }, index) => {
      filled[down]?.splice(across, 1, traits[from + index]);
    });
    return inside.length === holes.length && isKept(field, filled) ? [place] : [];
  });
}

/** Where the figures stand, by the rows and the columns that their middles make. */
function fieldOf(shown: readonly Bounds[], traits: readonly Traits[]): Field {
  const placed = shown.map((bounds, index) => ({ ...bounds, index }));
  const rows = rowsOf(placed);
  const columns = rowsOf(placed.map(laidDown));
  return rows.map((row) =>
    columns.map((column) => {
      const one = row.find(({ index }) => column.some((other) => other.index === index));
      return one && traits[one.index];
    }),
  );
}

function laidDown<T extends Bounds>(item: T): T {
  const { left, right, top, bottom } = item;
  return { ...item, left: top, right: bottom, top: left, bottom: right };
}

/** Whether every shift under which the field repeats itself, in form or in colour, holds once the hole is filled. */
function isKept(field: Field, filled: Field): boolean {
  const reach = Array.from(
    { length: 2 * field.length - 1 },
    (_, index) => index - field.length + 1,
  );
  const shifts = reach.flatMap((down) => reach.map((across) => [down, across] as const));
  return shifts.every((shift) =>
    ([0, 1] as const).every((trait) => {
      const before = pairsOf(field, shift).map(([one, other]) => one[trait] === other[trait]);
      const isRepeat = before.length > 1 && before.every(Boolean);
      const after = pairsOf(filled, shift);
      return !isRepeat || after.every(([one, other]) => one[trait] === other[trait]);
    }),
  );
}

function pairsOf(field: Field, [down, across]: readonly [number, number]): [Traits, Traits][] {
  return field.flatMap((row, y) =>
    row.flatMap((one, x): [Traits, Traits][] => {
      const other = field[y + down]?.[x + across];
      return one && other ? [[one, other]] : [];
    }),
  );
}
