// The drawn page measured: true sizes, the frame apart, figures apart at every turn, the answer's marks.
import { describe, expect, test } from 'vitest';
import { blankBetween, boundsOf, groupsOf, placedIn } from '../../../tests/scene-bounds.ts';
import { testSeed } from '../../../tests/seed.ts';
import type { Bounds } from '../../base/index.ts';
import type { Group } from '../../page/index.ts';
import { draw, room } from './draw.ts';
import { anyTasks, COLOUR, type Made, taskOf, valuesAt } from './tasks-to-test.ts';

const ALL = anyTasks(80, testSeed('turned-shapes, drawing'));

function pageOf({ printed, answer }: Made, grownMm: number, withAnswer = false): Group {
  const least = room(printed);
  const size = { widthMm: least.widthMm + grownMm, heightMm: least.heightMm + grownMm };
  return withAnswer ? draw(printed, size, COLOUR, answer) : draw(printed, size, COLOUR);
}

describe('R9 on the drawn page', () => {
  test('choices stand 5 mm apart or more at every turn, and the frame further from each of them', () => {
    for (const made of ALL) {
      const page = pageOf(made, 0);
      const choices = groupsOf(page, 'choice').map(boundsOf);
      const [frame] = groupsOf(page, 'model').map(boundsOf);
      if (!frame) throw new Error('no model is drawn');
      for (const [index, one] of choices.entries()) {
        expect(blankBetween(frame, one), made.name).toBeGreaterThan(13);
        for (const other of choices.slice(index + 1)) {
          expect(blankBetween(one, other), made.name).toBeGreaterThan(5);
        }
      }
    }
  });

  test.each([0, 30])(
    'a bigger circle is bigger by its ratio, and the smaller 8 mm or more, %i mm grown',
    (grownMm) => {
      const made = Array.from({ length: 80 }, (_, seed) => taskOf(valuesAt(2), seed)).find(
        ({ printed }) => printed.model.form === 'circle',
      );
      if (!made) throw new Error('no circle among eighty');
      const page = pageOf(made, grownMm);
      const [model] = groupsOf(page, 'model');
      const match = groupsOf(page, 'choice')[made.answer[0] ?? 0];
      if (!model || !match) throw new Error('no model or match is drawn');
      const figure = { ...model, children: model.children.slice(1) };
      const widthOf = ({ left, right }: Bounds) => right - left;
      const [small, big] = [widthOf(boundsOf(figure)), widthOf(boundsOf(match))];
      expect(small).toBeGreaterThan(8);
      expect(big / small).toBeCloseTo(1 / 0.6, 1);
    },
  );

  test('the answer is one mark on each right choice and near no other', () => {
    for (const made of ALL) {
      const page = pageOf(made, 10, true);
      const [answer] = groupsOf(page, 'answer');
      if (!answer) throw new Error(`${made.name}: no answer is drawn`);
      const marks = placedIn(answer).map(({ bounds }) => bounds);
      expect(marks.length, made.name).toBe(made.answer.length);
      for (const [place, choice] of groupsOf(page, 'choice').map(boundsOf).entries()) {
        const on = marks.filter((mark) => blankBetween(mark, choice) < 0);
        expect(on.length, made.name).toBe(made.answer.includes(place) ? 1 : 0);
      }
      expect(groupsOf(pageOf(made, 10), 'answer')).toEqual([]);
    }
  });
});

test('every task in a grid fits a sheet of A4 or US Letter, upright', () => {
  // 210 by 297 and 215.9 by 279.4 mm less margins of 12 mm and a foot of 18.05 mm.
  for (const { printed, values, name } of ALL) {
    if (values.layout === 'row') continue;
    const { widthMm, heightMm } = room(printed);
    expect(widthMm, name).toBeLessThanOrEqual(210 - 24);
    expect(heightMm, name).toBeLessThanOrEqual(279.4 - 24 - 18.05);
  }
});
