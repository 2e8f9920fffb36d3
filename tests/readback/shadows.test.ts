// Reads printed sheets of shadows back from pixels: which dark silhouette is that of each framed picture.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../seed.ts';
import { type Bounds, boundsOf, inReadingOrder, tasksOf } from './boxes.ts';
import { lookAt, silhouetteDifference } from './looks.ts';
import {
  FROM_BOTH_SIDES,
  type PrintedSheet,
  printSheets,
  sheetsForHands,
} from './printed-sheets.ts';

const STEPS = 13;
const DPI = 100;
/** Pieces of one shadow, such as the bells of a clock, are nearer than this, in mm. */
const APART_MM = 1;

describe('shadows', () => {
  test.each(FROM_BOTH_SIDES)(
    'printed sheets of every step show, by their pixels alone, the shadow of each picture that the key names, %s',
    async (_, side) => {
      const seed = testSeed('shadows read back');
      for (const sheet of await printSheets(sheetsForHands('shadows', STEPS, 2, seed, side), DPI)) {
        const keys = sheet.tasks.map(({ answer }) => answer);
        expect(readAnswers(sheet), JSON.stringify(sheet.wanted)).toEqual(keys);
      }
    },
  );
});

/** For each task the place of the shadow that is most like each picture, from the left. */
function readAnswers({ raster }: PrintedSheet): number[][] {
  return tasksOf(raster).map((things) => {
    const framed = inReadingOrder(things.filter(({ inside }) => inside.length > 0));
    const models = framed.map(({ inside }) => lookAt(raster, boundsOf(inside)));
    const pieces = things.filter((thing) => !framed.includes(thing));
    const shadows = inReadingOrder(joined(pieces, (APART_MM / 25.4) * raster.dpi)).map((shadow) =>
      lookAt(raster, shadow),
    );
    return models.map((model) => {
      const away = shadows.map((shadow) => silhouetteDifference(model, shadow));
      return away.indexOf(Math.min(...away));
    });
  });
}

/** Bounds that overlap or lie nearer than `apart` made one. */
function joined(areas: readonly Bounds[], apart: number): Bounds[] {
  return areas.reduce<Bounds[]>((groups, area) => {
    const isNear = ({ left, right, top, bottom }: Bounds) =>
      left < area.right + apart &&
      right > area.left - apart &&
      top < area.bottom + apart &&
      bottom > area.top - apart;
    return [
      ...groups.filter((group) => !isNear(group)),
      boundsOf([...groups.filter(isNear), area]),
    ];
  }, []);
}
