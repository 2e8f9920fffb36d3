// Reads printed sheets of odd-one-out back from pixels: what looks like no other, in one thing or in several together.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../seed.ts';
import { tasksOf } from './boxes.ts';
import { isOneForm, isOneSize, kindsOf, type Look, lookAt } from './looks.ts';
import {
  FROM_BOTH_SIDES,
  IN_BOTH_INKS,
  type PrintedSheet,
  printSheets,
  sheetsOfSteps,
} from './printed-sheets.ts';

/** The last step, with kinds of pictures, asks for more than eyes can tell. */
const STEPS = 12;
const DPI = 100;

describe('odd-one-out', () => {
  test.each([...IN_BOTH_INKS, ...FROM_BOTH_SIDES.slice(1)])(
    'sheets of every step but pictures, %s, show by their pixels alone one figure that stands alone',
    async (_, way) => {
      const seed = testSeed('odd-one-out read back');
      for (const sheet of await printSheets(
        sheetsOfSteps('odd-one-out', STEPS, 2, seed, way),
        DPI,
      )) {
        const keys = sheet.tasks.map(({ answer }) => [(answer as { odd: number }).odd]);
        expect(readAnswers(sheet), JSON.stringify(sheet.wanted)).toEqual(keys);
      }
    },
  );
});

/** For each task the places of the figures that stand alone in some way of looking. */
function readAnswers({ raster }: PrintedSheet): number[][] {
  return tasksOf(raster).map((task) => {
    const looks = task.map((figure) => lookAt(raster, figure));
    const traits = [
      kindsOf(looks, (one, other) => one.colour === other.colour),
      kindsOf(looks, isOneForm),
      kindsOf(looks, isOneSizeOfOneForm),
    ];
    const ways = Array.from({ length: 2 ** traits.length - 1 }, (_, way) =>
      traits.filter((_, trait) => ((way + 1) >> trait) % 2 === 1),
    );
    const alone = new Set(ways.flatMap((way) => aloneIn(way)));
    return [...alone].sort((one, other) => one - other);
  });
}

/** Sizes of unlike forms cannot be read from how far they reach, so they are not compared. */
function isOneSizeOfOneForm(one: Look, other: Look): boolean {
  return isOneForm(one, other) ? isOneSize(one, other) : false;
}

/** Who has these traits together with nobody; where all differ, that singles out none. */
function aloneIn(traits: readonly (readonly number[])[]): number[] {
  const looks = (traits[0] ?? []).map((_, place) => traits.map((trait) => trait[place]).join());
  const alone = looks.flatMap((look, place) =>
    looks.filter((other) => other === look).length === 1 ? [place] : [],
  );
  return alone.length === looks.length ? [] : alone;
}
