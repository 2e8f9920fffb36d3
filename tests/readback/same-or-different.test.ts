// Reads printed sheets of same-or-different back from pixels: the frames, and which hold two that look alike.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../seed.ts';
import { tasksOf } from './boxes.ts';
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

describe('same-or-different', () => {
  test.each([...IN_BOTH_INKS, ...FROM_BOTH_SIDES.slice(1)])(
    'sheets of every step, %s, give from their pixels alone the pairs that are the same',
    async (_, way) => {
      const seed = testSeed('same-or-different read back');
      for (const sheet of await printSheets(
        sheetsForHands('same-or-different', STEPS, 2, seed, way),
        DPI,
      )) {
        const keys = sheet.tasks.map(({ answer }) => answer);
        expect(readAnswers(sheet), JSON.stringify(sheet.wanted)).toEqual(keys);
      }
    },
  );
});

/** For each task the frames, in reading order, whose two figures look alike. */
function readAnswers({ raster }: PrintedSheet): number[][] {
  return tasksOf(raster).map((task) => {
    const frames = task.filter(({ inside }) => inside.length > 0);
    return frames.flatMap(({ inside }, place) => {
      const [left, right, ...more] = inside.map((area) => lookAt(raster, area));
      if (!left || !right || more.length > 0) throw new Error(`frame ${place} has no two figures`);
      return looksAlike(left, right) ? [place] : [];
    });
  });
}
