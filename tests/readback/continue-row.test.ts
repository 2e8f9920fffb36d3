// Reads printed sheets of continue-row back from pixels: goes on with the row by its shortest repeat of colour and of form.
import { describe, expect, test } from 'vitest';
import type { Figure } from '../../src/figures/index.ts';
import { testSeed } from '../seed.ts';
import { type Thing, tasksOf } from './boxes.ts';
import { isOneForm, kindsOf, type Look, lookAt } from './looks.ts';
import {
  FROM_BOTH_SIDES,
  type PrintedSheet,
  printSheets,
  sheetsOfSteps,
} from './printed-sheets.ts';
import type { Raster } from './raster.ts';

const STEPS = 12;
const DPI = 100;
/** Of a frame to fill less than this is inked, of a filled figure all. */
const HOLLOW = 0.6;

describe('continue-row', () => {
  test.each(FROM_BOTH_SIDES)(
    'printed rows of every step go on, by their pixels alone, with what the key names among what is offered, %s',
    async (_, side) => {
      const seed = testSeed('continue-row read back');
      for (const sheet of await printSheets(
        sheetsOfSteps('continue-row', STEPS, 2, seed, side),
        DPI,
      )) {
        const keys = sheet.tasks.map(({ printed, answer }) => {
          const { offered } = printed as { offered: Figure[] };
          return (answer as { figures: Figure[] }).figures.map((figure) =>
            offered.findIndex(
              ({ form, colour }) => form === figure.form && colour === figure.colour,
            ),
          );
        });
        expect(readAnswers(sheet), JSON.stringify(sheet.wanted)).toEqual(keys);
      }
    },
  );
});

/** For each task which of what is offered belongs into each empty place, from left to right; -1: none does. */
function readAnswers({ raster }: PrintedSheet): number[][] {
  return tasksOf(raster).map((task) => readTask(raster, task));
}

function readTask(raster: Raster, task: readonly Thing[]): number[] {
  const row = task
    .filter(({ inside }) => inside.length === 0)
    .map((place) => lookAt(raster, place));
  const [tray, ...more] = task.filter(({ inside }) => inside.length > 0);
  if (!tray || more.length > 0) throw new Error(`${more.length + 1} trays`);
  const offered = tray.inside.map((figure) => lookAt(raster, figure));
  const isEmpty = ({ inkShare }: Look) => inkShare < HOLLOW;
  const forms = kindsOf([...row, ...offered], isOneForm);
  const shownForms = row.map((look, place) => (isEmpty(look) ? undefined : forms[place]));
  const shownColours = row.map((look) => (isEmpty(look) ? undefined : look.colour));
  const [formsOn, coloursOn] = [goneOnWith(shownForms), goneOnWith(shownColours)];
  return row.flatMap((look, place) => {
    if (!isEmpty(look)) return [];
    const fitting = offered.flatMap(({ colour }, choice) =>
      colour === coloursOn[place] && forms[row.length + choice] === formsOn[place] ? [choice] : [],
    );
    return fitting.length === 1 ? fitting : [-1];
  });
}

/** The row filled by the shortest repeat that what is shown bears out everywhere. */
function goneOnWith<T>(row: readonly (T | undefined)[]): readonly (T | undefined)[] {
  for (let length = 1; length < row.length; length++) {
    const unit = Array.from({ length }, (_, at) => [
      ...new Set(row.filter((one, place) => one !== undefined && place % length === at)),
    ]);
    if (unit.every((ones) => ones.length === 1))
      return row.map((_, place) => unit[place % length]?.[0]);
  }
  return row;
}
