// The drawn page measured: one true size, the frame apart, the answer's ring and line.
import { describe, expect, test } from 'vitest';
import { blankBetween, boundsOf, groupsOf } from '../../../tests/scene-bounds.ts';
import { testSeed } from '../../../tests/seed.ts';
import type { Bounds } from '../../base/index.ts';
import type { Group } from '../../page/index.ts';
import { draw, room } from './draw.ts';
import { anyTasks, COLOUR, type Made } from './tasks-to-test.ts';

const ALL = anyTasks(80, testSeed('find-the-same, drawing'));

function pageOf({ printed, answer }: Made, grownMm: number, withAnswer = false): Group {
  const least = room(printed);
  const size = { widthMm: least.widthMm + grownMm, heightMm: least.heightMm + grownMm };
  return withAnswer ? draw(printed, size, COLOUR, answer) : draw(printed, size, COLOUR);
}

function sizeOf({ left, top, right, bottom }: Bounds): readonly number[] {
  return [right - left, bottom - top];
}

function choicesOf(page: Group): readonly Bounds[] {
  return groupsOf(page, 'choice').map(boundsOf);
}

function modelOf(page: Group): Group {
  const [model] = groupsOf(page, 'model');
  if (!model) throw new Error('no model is drawn');
  return model;
}

describe('R9 on the drawn page', () => {
  test.each([0, 30])('the model is exactly as large as its match, %i mm grown', (grownMm) => {
    for (const made of ALL) {
      const page = pageOf(made, grownMm);
      const [, ...figure] = modelOf(page).children;
      const match = choicesOf(page)[made.answer];
      if (!match) throw new Error(`${made.name}: no match is drawn`);
      const model = boundsOf({ kind: 'group', role: 'figure', children: figure });
      for (const [side, mm] of sizeOf(model).entries()) {
        expect(mm, made.name).toBeCloseTo(sizeOf(match)[side] ?? 0, 6);
      }
    }
  });

  test('choices stand 7.9 mm apart or more, and the frame twice as far from each of them', () => {
    for (const made of ALL) {
      const page = pageOf(made, 0);
      const choices = choicesOf(page);
      const frame = boundsOf(modelOf(page));
      for (const [index, one] of choices.entries()) {
        expect(blankBetween(frame, one), made.name).toBeGreaterThan(16);
        for (const other of choices.slice(index + 1)) {
          expect(blankBetween(one, other), made.name).toBeGreaterThanOrEqual(7.9);
        }
      }
    }
  });

  test('the answer is one ring round the match alone, or one line that reaches no other choice', () => {
    for (const made of ALL) {
      const page = pageOf(made, 10, true);
      const [answer] = groupsOf(page, 'answer');
      if (!answer) throw new Error(`${made.name}: no answer is drawn`);
      const drawn = boundsOf(answer);
      for (const [place, choice] of choicesOf(page).entries()) {
        const isRing = made.values.response !== 'join';
        const isMatch = place === made.answer;
        if (isMatch && isRing) expect(blankBetween(drawn, choice), made.name).toBeLessThan(-7);
        if (!isMatch && isRing) expect(blankBetween(drawn, choice), made.name).toBeGreaterThan(3);
        if (!isRing && !isMatch) {
          expect(distanceToLine(answer, choice), made.name).toBeGreaterThan(2);
        }
      }
      expect(groupsOf(pageOf(made, 10), 'answer')).toEqual([]);
    }
  });
});

/** From points along the answer's straight line to an upright rectangle, the least distance in mm. */
function distanceToLine(answer: Group, { left, top, right, bottom }: Bounds): number {
  const [shape] = answer.children;
  const steps = shape?.kind === 'shape' ? shape.path : [];
  const [from, to] = steps;
  if (from?.[0] !== 'M' || to?.[0] !== 'L') throw new Error('the answer is not one straight line');
  const points = Array.from({ length: 101 }, (_, index) => ({
    x: from[1] + ((to[1] - from[1]) * index) / 100,
    y: from[2] + ((to[2] - from[2]) * index) / 100,
  }));
  const distances = points.map(({ x, y }) =>
    Math.hypot(Math.max(left - x, 0, x - right), Math.max(top - y, 0, y - bottom)),
  );
  return Math.min(...distances);
}

test('every task in a grid fits a sheet of A4 or US Letter, upright', () => {
  // 210 by 297 and 215.9 by 279.4 mm less margins of 12 mm and a foot of 18.05 mm.
  for (const { printed, values, name } of ALL) {
    if (values.layout === 'row') continue;
    const { widthMm, heightMm } = room(printed);
    expect(widthMm, name).toBeLessThanOrEqual(210 - 24);
    expect(heightMm, name).toBeLessThanOrEqual(279.4 - 24 - 18.05);
  }
});
