// Reads printed sheets of size-order back from pixels: measures how far figures reach, and which is bigger.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../seed.ts';
import { middleColour, tasksOf } from './boxes.ts';
import {
  FROM_BOTH_SIDES,
  type PrintedSheet,
  printSheets,
  sheetsOfSteps,
} from './printed-sheets.ts';
import { type Area, isInk } from './raster.ts';

const STEPS = 10;
const DPI = 90;
/** What is bigger is so by this ratio in width and in height: the fair 1.3, less what pixels blur. */
const BIGGER = 1.22;

describe('size-order', () => {
  test.each(FROM_BOTH_SIDES)(
    'printed figures of every step are, measured by their pixels alone, as big as the key says, %s',
    async (_, side) => {
      const seed = testSeed('size-order read back');
      for (const sheet of await printSheets(
        sheetsOfSteps('size-order', STEPS, 3, seed, side),
        DPI,
      )) {
        const orders = readOrders(sheet);
        const found = sheet.tasks.map(({ printed }, index) => {
          const order = orders[index] ?? [];
          const { asked } = printed as { asked: string };
          return { biggest: order.slice(-1), order }[asked];
        });
        expect(found, JSON.stringify(sheet.wanted)).toEqual(
          sheet.tasks.map(({ answer }) => answer),
        );
      }
    },
  );
});

/** For each task the places of its figures, from the left, from the smallest to the biggest. */
function readOrders({ raster }: PrintedSheet): number[][] {
  // By ink alone, so that a figure is not one with the fainter line on which it stands.
  return tasksOf(raster, 4, isInk).map((task) => {
    const isEmpty = (area: Area) => middleColour(raster, area) === '#ffffff';
    // Figures are all filled, or all outlines: then there are no boxes below them.
    const isFilled = !task.every(isEmpty);
    const boxes = fromTheLeft(isFilled ? task.filter(isEmpty) : []);
    const figures = fromTheLeft(isFilled ? task.filter((area) => !isEmpty(area)) : task);
    if (boxes.length > 0) expect(orderOf(boxes, 1)).toEqual([...figures.keys()]);
    return orderOf(figures, BIGGER);
  });
}

function fromTheLeft(areas: readonly Area[]): Area[] {
  return areas.toSorted((one, other) => one.left - other.left);
}

/** Fails where one is not bigger than the one before it in the order, by more than this ratio in both measures. */
function orderOf(areas: readonly Area[], ratio: number): number[] {
  const sizes = areas.map(({ left, right, top, bottom }, place) => {
    return { place, width: right - left + 1, height: bottom - top + 1 };
  });
  const rising = sizes.sort((one, other) => one.width - other.width);
  rising.slice(1).forEach((one, index) => {
    const { width = 0, height = 0 } = rising[index] ?? {};
    expect(one.width / width).toBeGreaterThan(ratio);
    expect(one.height / height).toBeGreaterThan(ratio);
  });
  return rising.map(({ place }) => place);
}
