// Reads printed sheets of look-and-remember back from pixels: the frame, the fold, and what comes again below it.
import { describe, expect, test } from 'vitest';
import { PAPERS, sheetArea } from '../../src/page/index.ts';
import { testSeed } from '../seed.ts';
import { boundsOf, inReadingOrder, type Thing, tasksOf } from './boxes.ts';
import { lookAt, looksAlike } from './looks.ts';
import { type PrintedSheet, printSheets, sheetsOfSteps } from './printed-sheets.ts';

const STEPS = 13;
const DPI = 100;
/** The dashes of the fold are longer than the first and thinner than the second, in mm. */
const LEAST_DASH_MM = 3;
const THIN_MM = 1;

describe('look-and-remember', () => {
  const wanted = sheetsOfSteps(
    'look-and-remember',
    STEPS,
    2,
    testSeed('look-and-remember read back'),
  );

  test('printed sheets of every step show below their fold, by their pixels alone, what the key says comes again', async () => {
    for (const sheet of await printSheets(wanted, DPI)) {
      const found = readSheet(sheet);
      expect([found.again], JSON.stringify(sheet.wanted)).toEqual(
        sheet.tasks.map(({ answer }) => answer),
      );
      expect(found, JSON.stringify(sheet.wanted)).toMatchObject({
        isFrameAbove: true,
        areChoicesBelow: true,
      });
      expect(Math.abs(found.foldMm - middleMm()), JSON.stringify(sheet.wanted)).toBeLessThan(1);
      // Folded there, the upper part lies wholly behind the lower.
      expect(found.foldMm).toBeLessThan(PAPERS.A4.heightMm / 2);
    }
  });
});

/** The middle of the room for tasks, in mm from the top of the page. */
function middleMm(): number {
  const { top, height } = sheetArea('A4', 'portrait');
  return top + height / 2;
}

function readSheet({ raster }: PrintedSheet) {
  const mm = (pixels: number) => (pixels / raster.dpi) * 25.4;
  const things = tasksOf(raster, LEAST_DASH_MM).flat();
  const isDash = ({ top, bottom }: Thing) => mm(bottom - top) < THIN_MM;
  const fold = boundsOf(things.filter(isDash));
  const [frame, ...more] = things.filter(({ inside }) => inside.length > 0);
  if (!frame || more.length > 0) throw new Error(`${more.length + 1} frames`);
  const choices = inReadingOrder(things.filter((thing) => thing !== frame && !isDash(thing)));
  const set = frame.inside.map((figure) => lookAt(raster, figure));
  return {
    again: choices.flatMap((choice, place) =>
      set.some((one) => looksAlike(one, lookAt(raster, choice))) ? [place] : [],
    ),
    foldMm: mm((fold.top + fold.bottom) / 2),
    isFrameAbove: frame.bottom < fold.top,
    areChoicesBelow: choices.every(({ top }) => top > fold.bottom),
  };
}
