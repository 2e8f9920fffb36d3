// Reads printed sheets of find-the-same back from pixels: the model in its frame, and which choice looks like it.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../seed.ts';
import { inReadingOrder, tasksOf } from './boxes.ts';
import { lookAt, looksAlike } from './looks.ts';
import {
  FROM_BOTH_SIDES,
  IN_BOTH_INKS,
  type PrintedSheet,
  printSheets,
  sheetsForHands,
} from './printed-sheets.ts';

const STEPS = 14;
const DPI = 100;

describe('find-the-same', () => {
  test.each([...IN_BOTH_INKS, ...FROM_BOTH_SIDES.slice(1)])(
    'sheets of every step, %s, show by their pixels alone one choice that is just like the model',
    async (_, way) => {
      const seed = testSeed('find-the-same read back');
      const wanted = sheetsForHands('find-the-same', STEPS, 2, seed, way);
      for (const sheet of await printSheets(wanted, DPI)) {
        const keys = sheet.tasks.map(({ answer }) => [answer]);
        expect(readAnswers(sheet), JSON.stringify(sheet.wanted)).toEqual(keys);
      }
    },
  );
});

/** For each task the places, among what stands in no frame, of the figures that look like the framed one. */
function readAnswers({ raster }: PrintedSheet): number[][] {
  return tasksOf(raster).map((task) => {
    const [model, ...more] = task.flatMap(({ inside }) => inside);
    if (!model || more.length > 0) throw new Error('not one model');
    const choices = inReadingOrder(task.filter(({ inside }) => inside.length === 0));
    const wanted = lookAt(raster, model);
    return choices.flatMap((choice, place) =>
      looksAlike(lookAt(raster, choice), wanted) ? [place] : [],
    );
  });
}
