// The drawn page measured: parts apart, equal cells, circles of the size of stickers, the answer in its cells.
import { describe, expect, test } from 'vitest';
import { boundsOf, groupsOf } from '../../../tests/scene-bounds.ts';
import { testSeed } from '../../../tests/seed.ts';
import { draw, room } from './draw.ts';
import { planPage } from './page-plan.ts';
import { PARAMETERS } from './task.ts';
import { COLOUR, type Made, makeTasks, taskOf, valuesAt } from './tasks-to-test.ts';

const MADE = makeTasks(120, testSeed('one-of-each, drawing'));

function sizeOf({ printed }: Made, moreMm: number) {
  const least = room(printed);
  return { widthMm: least.widthMm + moreMm, heightMm: least.heightMm + moreMm };
}

describe('R8 on the drawn page', () => {
  test('the figures to use, the grid and the pieces stand further apart than figures in the grid', () => {
    for (const made of MADE) {
      const size = sizeOf(made, 0);
      const page = draw(made.printed, size, COLOUR);
      const [tray, grid] = [groupsOf(page, 'tray'), groupsOf(page, 'grid')].map((it) =>
        boundsOf(it),
      );
      if (!tray || !grid) throw new Error(made.name);
      const plan = planPage(made.printed, size);
      const insideMm = (plan.cells[0]?.width ?? 0) - plan.figureMm;
      expect(grid.top - tray.bottom, made.name).toBeGreaterThan(insideMm);
      const pieces = groupsOf(page, 'piece');
      if (pieces.length > 0) {
        expect(boundsOf(pieces).top - grid.bottom, made.name).toBeGreaterThan(insideMm);
      }
    }
  });

  test('cells are square, equal and at least 16 mm wide', () => {
    for (const made of MADE) {
      for (const cell of planPage(made.printed, sizeOf(made, 30)).cells) {
        expect(cell.width, made.name).toBeCloseTo(cell.height, 9);
        expect(cell.width, made.name).toBeGreaterThanOrEqual(16);
      }
    }
  });

  test('every piece has room in its cell', () => {
    for (const made of MADE.filter(({ printed }) => printed.pieces)) {
      const plan = planPage(made.printed, sizeOf(made, 0));
      for (const piece of plan.pieces) {
        expect(piece.width, made.name).toBeCloseTo(piece.height, 9);
        expect(piece.width, made.name).toBeLessThan(plan.cells[0]?.width ?? 0);
      }
    }
  });
});

test.each(PARAMETERS.stickerMm.values)(
  'R6 dots and empty circles are as wide as a sticker of %s mm',
  (stickerMm) => {
    const made = taskOf(valuesAt(6, { stickerMm }), 4);
    for (const moreMm of [0, 60]) {
      const page = draw(made.printed, sizeOf(made, moreMm), COLOUR);
      for (const role of ['given', 'empty']) {
        for (const group of groupsOf(page, role)) {
          const { left, right } = boundsOf(group);
          expect(right - left).toBeCloseTo(Number(stickerMm), 2);
        }
      }
    }
  },
);

test('R1 the answer page shows the key in the empty cells, in their order', () => {
  for (const made of MADE) {
    const size = sizeOf(made, 20);
    const [shown] = groupsOf(draw(made.printed, size, COLOUR, made.answer), 'answer');
    const figures = shown ? groupsOf(shown, 'figure') : [];
    const plan = planPage(made.printed, size);
    const empty = plan.cells.filter((_, place) => made.printed.rows.flat()[place] === null);
    expect(figures.length, made.name).toBe(empty.length);
    for (const [index, figure] of figures.entries()) {
      const [cell, { left, top }] = [empty[index], boundsOf(figure)];
      if (!cell) throw new Error(made.name);
      expect(left - cell.left, made.name).toBeGreaterThan(0);
      expect(left - cell.left, made.name).toBeLessThan(cell.width);
      expect(top - cell.top, made.name).toBeGreaterThan(0);
      expect(top - cell.top, made.name).toBeLessThan(cell.height);
    }
  }
});
