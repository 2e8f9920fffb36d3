// Reads printed sheets of what-changed back from pixels: two framed pictures, and the places where they differ.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../seed.ts';
import { type Bounds, inReadingOrder, type Thing, tasksOf } from './boxes.ts';
import { type Look, lookAt, looksAlike } from './looks.ts';
import {
  FROM_BOTH_SIDES,
  IN_BOTH_INKS,
  type PrintedSheet,
  printSheets,
  sheetsForHands,
} from './printed-sheets.ts';
import type { Raster } from './raster.ts';

const STEPS = 12;
const DPI = 100;
/** Figures nearer than this, in mm, stand in one place, if not in its middle: forms reach unlike far from there. */
const ONE_PLACE_MM = 6;
/** What has not changed stands off by less than this, in mm. */
const ONE_SPOT_MM = 0.6;

describe('what-changed', () => {
  test.each([...IN_BOTH_INKS, ...FROM_BOTH_SIDES.slice(1)])(
    'sheets of every step, %s, differ by their pixels alone in the places of the key and in no others',
    async (_, way) => {
      const seed = testSeed('what-changed read back');
      for (const sheet of await printSheets(
        sheetsForHands('what-changed', STEPS, 2, seed, way),
        DPI,
      )) {
        const keys = sheet.tasks.map(({ answer }) => answer);
        expect(readAnswers(sheet), JSON.stringify(sheet.wanted)).toEqual(keys);
      }
    },
  );
});

/** A figure and its bounds, in pixels from the left and the top of its frame. */
interface Placed extends Bounds {
  readonly look: Look;
}

/** For each task the places, in reading order of all where something stands in a picture, that differ. */
function readAnswers({ raster }: PrintedSheet): number[][] {
  return tasksOf(raster).map((task) => {
    const [first, second, ...more] = task.map((frame) => pictureIn(raster, frame));
    if (!first || !second || more.length > 0) throw new Error(`${task.length} frames`);
    const isNear = (one: Placed, other: Placed, mm: number) =>
      apart(one, other) < (mm / 25.4) * raster.dpi;
    const inPlace = (picture: readonly Placed[], figure: Placed) =>
      picture.find((other) => isNear(other, figure, ONE_PLACE_MM));
    const spots = [...first, ...second.filter((figure) => !inPlace(first, figure))];
    return inReadingOrder(spots).flatMap((spot, place) => {
      const [one, other] = [inPlace(first, spot), inPlace(second, spot)];
      const isAlike =
        one && other && isNear(one, other, ONE_SPOT_MM) && looksAlike(one.look, other.look);
      return isAlike ? [] : [place];
    });
  });
}

/** How far the middles of two figures are from each other, in pixels. */
function apart(one: Bounds, other: Bounds): number {
  const across = one.left + one.right - other.left - other.right;
  const down = one.top + one.bottom - other.top - other.bottom;
  return Math.hypot(across, down) / 2;
}

function pictureIn(raster: Raster, frame: Thing): Placed[] {
  return frame.inside.map((area) => ({
    look: lookAt(raster, area),
    left: area.left - frame.left,
    right: area.right - frame.left,
    top: area.top - frame.top,
    bottom: area.bottom - frame.top,
  }));
}
