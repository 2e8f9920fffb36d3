// The drawn page measured: heads that show one thing, parts apart, pieces that fit, the answer in its cells.
import { describe, expect, test } from 'vitest';
import { boundsOf, groupsOf, placedIn } from '../../../tests/scene-bounds.ts';
import { testSeed } from '../../../tests/seed.ts';
import type { Group } from '../../page/index.ts';
import { hexOf } from '../../palette/index.ts';
import { draw, room } from './draw.ts';
import { planPage } from './page-plan.ts';
import { COLOUR, type Made, makeTasks, taskOf, valuesAt } from './tasks-to-test.ts';

const MADE = makeTasks(120, testSeed('crossing-table, drawing'));

function sizeOf({ printed }: Made, moreMm: number) {
  const least = room(printed);
  return { widthMm: least.widthMm + moreMm, heightMm: least.heightMm + moreMm };
}

/** All fills and strokes of a group. */
function inksOf(node: Group): string {
  return (
    JSON.stringify(node)
      .match(/#[0-9a-f]{6}/gi)
      ?.join(' ') ?? ''
  );
}

describe('R2 on the drawn page', () => {
  test('the head of a colour is painted in it, and other heads show no colour', () => {
    const made = taskOf(valuesAt(7), 5);
    const { rowHeads = [], columnHeads = [] } = made.printed;
    const heads = groupsOf(draw(made.printed, sizeOf(made, 0), COLOUR), 'head');
    expect(heads.length).toBe(6);
    const colours = [...rowHeads, ...columnHeads].map(({ colour }) => colour);
    const used = colours.flatMap((colour) => (colour ? [hexOf(colour)] : []));
    expect(used.length).toBe(3);
    for (const [place, head] of heads.entries()) {
      const colour = colours[place];
      const shown = used.filter((hex) => inksOf(head).includes(hex));
      expect(shown).toEqual(colour ? [hexOf(colour)] : []);
    }
  });
});

describe('R8 on the drawn page', () => {
  test('heads are clear of the table, and nearer to it than what is loose', () => {
    for (const made of MADE.filter(({ values }) => values.heads === 'both')) {
      const page = draw(made.printed, sizeOf(made, 0), COLOUR);
      const table = boundsOf(groupsOf(page, 'table'));
      const plan = planPage(made.printed, sizeOf(made, 0));
      const above = Math.max(...plan.columnHeads.map(({ top, height }) => top + height));
      const beside = Math.max(...plan.rowHeads.map(({ left, width }) => left + width));
      const clear = Math.min(table.top - above, table.left - beside);
      expect(clear, made.name).toBeGreaterThan(2);
      const loose = groupsOf(page, 'loose');
      if (loose.length > 0) {
        expect(boundsOf(loose).top - table.bottom, made.name).toBeGreaterThan(2 * clear);
      }
    }
  });

  test('each head stands beside its row or above its column, and is as large as a cell', () => {
    for (const made of MADE) {
      const plan = planPage(made.printed, sizeOf(made, 30));
      const columns = made.printed.rows[0]?.length ?? 1;
      for (const [place, head] of plan.rowHeads.entries()) {
        expect(head.top, made.name).toBeCloseTo(plan.cells[place * columns]?.top ?? 0, 9);
        expect(head.height, made.name).toBeCloseTo(plan.cells[0]?.height ?? 0, 9);
      }
      for (const [place, head] of plan.columnHeads.entries()) {
        expect(head.left, made.name).toBeCloseTo(plan.cells[place]?.left ?? 0, 9);
        expect(head.width, made.name).toBeCloseTo(plan.cells[0]?.width ?? 0, 9);
      }
    }
  });

  test('cells are square and at least 16 mm wide, pieces square and a little less than a cell', () => {
    for (const made of MADE) {
      const plan = planPage(made.printed, sizeOf(made, 30));
      const side = plan.cells[0]?.width ?? 0;
      expect(side, made.name).toBeGreaterThanOrEqual(16);
      for (const cell of plan.cells) expect(cell.height, made.name).toBeCloseTo(side, 9);
      for (const { width, height } of plan.loose) {
        expect(width, made.name).toBeCloseTo(height, 9);
        expect(width, made.name).toBeLessThan(side);
        expect(width, made.name).toBeGreaterThanOrEqual(12);
      }
    }
  });
});

test('R1 the answer page shows the key in the empty cells, or a line into each', () => {
  for (const made of MADE) {
    const size = sizeOf(made, 20);
    const [shown] = groupsOf(draw(made.printed, size, COLOUR, made.answer), 'answer');
    const plan = planPage(made.printed, size);
    const empty = plan.cells.filter((_, place) => made.printed.rows.flat()[place] === null);
    if (!shown) throw new Error(made.name);
    const isJoined = made.values.response === 'join';
    // A line and the dot at its end.
    const ends = isJoined
      ? placedIn(shown).flatMap(({ bounds }, place) => (place % 2 === 1 ? [bounds] : []))
      : groupsOf(shown, 'figure').map((figure) => boundsOf(figure));
    expect(ends.length, made.name).toBe(empty.length);
    for (const [index, { left, top, right, bottom }] of ends.entries()) {
      const cell = empty[index];
      if (!cell) throw new Error(made.name);
      expect(left, made.name).toBeGreaterThan(cell.left);
      expect(right, made.name).toBeLessThan(cell.left + cell.width);
      expect(top, made.name).toBeGreaterThan(cell.top);
      expect(bottom, made.name).toBeLessThan(cell.top + cell.height);
    }
  }
});
