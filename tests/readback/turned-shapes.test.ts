// Reads printed sheets of turned-shapes back from pixels: turns and scales each silhouette until it lies best on the model.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../seed.ts';
import { inReadingOrder, tasksOf } from './boxes.ts';
import { type Look, lookAt } from './looks.ts';
import {
  FROM_BOTH_SIDES,
  type PrintedSheet,
  printSheets,
  sheetsForHands,
} from './printed-sheets.ts';

const STEPS = 13;
const DPI = 100;
/** Side of the silhouettes, in cells, and of the grid of points at which two are compared. */
const GRID = 64;
const POINTS = 44;
/** No shape reaches further from its middle than this, in sides of a square as large. */
const REACH = 1.3;

describe('turned-shapes', () => {
  test.each(FROM_BOTH_SIDES)(
    'printed sheets of every step show, by their pixels alone, the key as what is most like the model once turned, %s',
    async (_, side) => {
      const seed = testSeed('turned-shapes read back');
      for (const sheet of await printSheets(
        sheetsForHands('turned-shapes', STEPS, 2, seed, side),
        DPI,
      )) {
        const keys = sheet.tasks.map(({ answer }) => answer);
        expect(readAnswers(sheet), JSON.stringify(sheet.wanted)).toEqual(keys);
      }
    },
  );
});

/** For each task the places of the choices most like the model, as many as the child is told to find. */
function readAnswers({ raster, tasks }: PrintedSheet): number[][] {
  return tasksOf(raster).map((things, index) => {
    const printed = tasks[index]?.printed as { matches?: number } | undefined;
    const [model, ...more] = things.flatMap(({ inside }) => inside);
    if (!model || more.length > 0) throw new Error('not one model');
    const look = (area: typeof model) => insideOf(lookAt(raster, area, undefined, GRID));
    const wanted = look(model);
    const choices = inReadingOrder(things.filter(({ inside }) => inside.length === 0));
    const unlike = choices.map((choice, place) => ({
      place,
      by: leastUnlike(wanted, look(choice)),
    }));
    return unlike
      .sort((one, other) => one.by - other.by)
      .slice(0, printed?.matches ?? 1)
      .map(({ place }) => place)
      .sort((one, other) => one - other);
  });
}

/** Whether a point is inside, measured from the middle of a silhouette in sides of a square as large. */
type Inside = (x: number, y: number) => boolean;

function insideOf({ silhouette, width, height }: Look): Inside {
  const cells = silhouette.flatMap((isInside, cell) => (isInside ? [cell] : []));
  const mean = (of: (cell: number) => number) =>
    cells.reduce((sum, cell) => sum + of(cell) + 0.5, 0) / cells.length;
  const [column, row] = [mean((cell) => cell % GRID), mean((cell) => Math.floor(cell / GRID))];
  const side = Math.sqrt((cells.length * width * height) / GRID ** 2);
  return (x, y) => {
    const across = Math.floor(column + (x * side * GRID) / width);
    const down = Math.floor(row + (y * side * GRID) / height);
    const isOnGrid = across >= 0 && down >= 0 && across < GRID && down < GRID;
    return isOnGrid && silhouette[down * GRID + across] === true;
  };
}

/** In how many points two differ at least, of all eighths of a turn. */
function leastUnlike(one: Inside, other: Inside): number {
  const steps = Array.from(
    { length: POINTS },
    (_, at) => (2 * (at + 0.5) * REACH) / POINTS - REACH,
  );
  const eighths = Array.from({ length: 8 }, (_, eighth) => {
    const [cos, sin] = [Math.cos((eighth * Math.PI) / 4), Math.sin((eighth * Math.PI) / 4)];
    return steps.reduce(
      (sum, y) =>
        sum + steps.filter((x) => one(x, y) !== other(x * cos - y * sin, x * sin + y * cos)).length,
      0,
    );
  });
  return Math.min(...eighths);
}
