// The drawn page measured: true shares, one ground line, room between, and the answer where it belongs.
import { describe, expect, test } from 'vitest';
import { boundsOf, groupsOf, outsideOf } from '../../../tests/scene-bounds.ts';
import { testSeed } from '../../../tests/seed.ts';
import type { Bounds } from '../../base/index.ts';
import type { Group } from '../../page/index.ts';
import { draw, room } from './draw.ts';
import { anyTasks, COLOUR, type Made } from './tasks-to-test.ts';

const ALL = anyTasks(150, testSeed('size-order, drawing'));
/** Half the ink line round a figure. */
const EDGE_MM = 0.7;

function pageOf({ printed, answer }: Made, grownMm: number, withAnswer = false): Group {
  const least = room(printed);
  const size = { widthMm: least.widthMm + grownMm, heightMm: least.heightMm + grownMm };
  return withAnswer ? draw(printed, size, COLOUR, answer) : draw(printed, size, COLOUR);
}

function lengthOf({ left, top, right, bottom }: Bounds): number {
  return Math.max(right - left, bottom - top);
}

test('nothing lies outside the place of a task, with or without its answer', () => {
  for (const { printed, answer, name } of ALL) {
    const size = room(printed);
    for (const drawn of [draw(printed, size, COLOUR), draw(printed, size, COLOUR, answer)]) {
      expect(outsideOf(drawn, size.widthMm, size.heightMm), name).toEqual([]);
    }
  }
});

describe('R9 on the drawn page', () => {
  test('every row fits A4 and Letter upright, less margins of 12 mm', () => {
    for (const { printed, name } of ALL) {
      expect(room(printed).widthMm, name).toBeLessThanOrEqual(210 - 24);
      expect(room(printed).heightMm, name).toBeLessThanOrEqual(279.4 - 24 - 18.05);
    }
  });

  test.each([0, 30])(
    'figures of one form have their sizes, the smallest 12 mm, %i mm grown',
    (mm) => {
      for (const made of ALL) {
        if (/dots|dot-|shapes-|signs/.test(made.values.content)) continue;
        const { printed, name } = made;
        const sides = groupsOf(pageOf(made, mm), 'figure').map((figure) =>
          lengthOf(boundsOf(figure)),
        );
        expect(Math.min(...sides), name).toBeGreaterThanOrEqual(12);
        const most = Math.max(...sides);
        for (const [place, { size = 1 }] of printed.figures.entries()) {
          expect(Math.abs((sides[place] ?? 0) - size * most), name).toBeLessThan(EDGE_MM);
        }
      }
    },
  );

  test('neighbours stand apart, and no figure touches what lies below', () => {
    for (const made of ALL) {
      const page = pageOf(made, 0);
      const figures = groupsOf(page, 'choice').map(boundsOf);
      for (const [index, { left }] of figures.slice(1).entries()) {
        expect(left - (figures[index]?.right ?? 0), made.name).toBeGreaterThan(4);
      }
      const below = [...groupsOf(page, 'place'), ...groupsOf(page, 'strip')].map(boundsOf);
      const lowest = Math.max(...figures.map(({ bottom }) => bottom));
      for (const { top } of below) expect(top - lowest, made.name).toBeGreaterThan(3);
    }
  });

  test('on a ground line all stand on it', () => {
    for (const made of ALL) {
      const { layout, response, content } = made.values;
      if (layout === 'loose' || response === 'cut' || /dot-|signs/.test(content)) continue;
      const bottoms = groupsOf(pageOf(made, 10), 'choice').map((figure) => boundsOf(figure).bottom);
      expect(Math.max(...bottoms) - Math.min(...bottoms), made.name).toBeLessThan(EDGE_MM);
    }
  });
});

test('R8 the answer has a ring, a numeral, a line or a card for each figure of the key', () => {
  for (const made of ALL) {
    const [key] = groupsOf(pageOf(made, 10, true), 'answer');
    const count = made.answer.length;
    const drawn = key?.children.length ?? 0;
    const wanted = {
      point: count,
      ring: 1,
      cut: count,
      join: 2 * count,
      dots: (count * (count + 1)) / 2,
    };
    expect(drawn, made.name).toBe(wanted[made.values.response]);
    expect(groupsOf(pageOf(made, 10), 'answer')).toEqual([]);
  }
});
