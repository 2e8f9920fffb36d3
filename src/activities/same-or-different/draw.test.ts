// The drawn page measured: true sizes, boxes apart, marks that belong to one box.
import { describe, expect, test } from 'vitest';
import { blankBetween, boundsOf, groupsOf } from '../../../tests/scene-bounds.ts';
import { testSeed } from '../../../tests/seed.ts';
import type { Group } from '../../page/index.ts';
import { draw, room } from './draw.ts';
import { anyTasks, COLOUR, type Made } from './tasks-to-test.ts';

const ALL = anyTasks(80, testSeed('same-or-different, drawing'));

function pageOf({ printed, answer }: Made, withAnswer = false): Group {
  const { widthMm, heightMm } = room(printed);
  const size = { widthMm: widthMm + 10, heightMm: heightMm + 10 };
  return withAnswer ? draw(printed, size, COLOUR, answer) : draw(printed, size, COLOUR);
}

describe('R8 on the drawn page', () => {
  test('boxes with their circles stand further apart than the two figures in them', () => {
    for (const made of ALL) {
      const pairs = groupsOf(pageOf(made), 'pair');
      const blanks = pairs.flatMap((pair, index) =>
        pairs.slice(index + 1).map((other) => blankBetween(boundsOf(pair), boundsOf(other))),
      );
      expect(Math.min(...blanks), made.name).toBeGreaterThanOrEqual(8.9);
    }
  });

  test('the two of a pair that are the same are equally large and do not touch', () => {
    for (const made of ALL) {
      for (const place of made.answer) {
        const pair = groupsOf(pageOf(made), 'pair')[place];
        const [one, other] = pair ? groupsOf(pair, 'member').map(boundsOf) : [];
        if (!one || !other) throw new Error(`${made.name}: no two figures are drawn`);
        expect(one.right - one.left, made.name).toBeCloseTo(other.right - other.left, 6);
        expect(blankBetween(one, other), made.name).toBeGreaterThan(5.9);
      }
    }
  });

  test('the answer is drawn on every pair that it is about and on no other', () => {
    for (const made of ALL) {
      const [answer] = groupsOf(pageOf(made, true), 'answer');
      if (!answer) throw new Error(`${made.name}: no answer is drawn`);
      const marks = answer.children.map((child) =>
        boundsOf({ kind: 'group', role: 'mark', children: [child] }),
      );
      const marked = groupsOf(pageOf(made), 'pair').flatMap((pair, place) =>
        marks.some((mark) => blankBetween(mark, boundsOf(pair)) < 0) ? [place] : [],
      );
      const all = made.printed.pairs.map((_, place) => place);
      const others = all.filter((place) => !made.answer.includes(place));
      const { response } = made.values;
      const wanted = response === 'cross' ? others : response === 'signs' ? all : [...made.answer];
      expect(marked, made.name).toEqual(wanted);
      expect(groupsOf(pageOf(made), 'answer')).toEqual([]);
    }
  });
});

test('every task fits a sheet of A4 or US Letter, upright', () => {
  // 210 by 297 and 215.9 by 279.4 mm less margins of 12 mm and a foot of 18.05 mm.
  for (const { printed, name } of ALL) {
    const { widthMm, heightMm } = room(printed);
    expect(widthMm, name).toBeLessThanOrEqual(210 - 24);
    expect(heightMm, name).toBeLessThanOrEqual(279.4 - 24 - 18.05);
  }
});
