// The drawn page measured: frames apart, shadows large enough, lines that cross no figure.
import { describe, expect, test } from 'vitest';
import { blankBetween, boundsOf, groupsOf } from '../../../tests/scene-bounds.ts';
import { testSeed } from '../../../tests/seed.ts';
import type { Group } from '../../page/index.ts';
import { draw, room } from './draw.ts';
import { planPage } from './page-plan.ts';
import { anyTasks, COLOUR, type Made } from './tasks-to-test.ts';

const ALL = anyTasks(80, testSeed('shadows, drawing'));

function pageOf({ printed, answer }: Made, withAnswer = false): Group {
  const size = room(printed);
  return withAnswer ? draw(printed, size, COLOUR, answer) : draw(printed, size, COLOUR);
}

describe('R8 on the drawn page', () => {
  test('frames stand further from the shadows than these from each other', () => {
    for (const made of ALL) {
      const { frames, shadows } = planPage(made.printed, room(made.printed));
      const [first, second] = shadows;
      if (!first || !second) throw new Error(`${made.name}: fewer than two shadows`);
      const apart = second.left - first.left - first.width;
      expect(apart, made.name).toBeGreaterThanOrEqual(6.9);
      for (const frame of groupsOf(pageOf(made), 'model').map(boundsOf)) {
        for (const shadow of groupsOf(pageOf(made), 'shadow').map(boundsOf)) {
          expect(blankBetween(frame, shadow), made.name).toBeGreaterThan(2 * apart);
        }
      }
      expect(frames.length, made.name).toBe(made.values.models);
    }
  });

  test('the smallest outline has a cell of 13 mm or more', () => {
    for (const { printed, name } of ALL) {
      const plan = planPage(printed, room(printed));
      for (const { width } of plan.filled) expect(width, name).toBeGreaterThanOrEqual(12.99);
      const [cell] = plan.models;
      const size = printed.models[0]?.size ?? 1;
      expect((cell?.width ?? 0) * size, name).toBeGreaterThanOrEqual(12.99);
    }
  });

  test('a ring goes round its shadow alone; a line stays between the rows', () => {
    for (const made of ALL) {
      const [answer] = groupsOf(pageOf(made, true), 'answer');
      if (!answer) throw new Error(`${made.name}: no answer is drawn`);
      expect(answer.children.length, made.name).toBe(made.values.models);
      const drawn = boundsOf(answer);
      const isJoin = made.values.response === 'join';
      for (const [place, shadow] of groupsOf(pageOf(made), 'shadow').entries()) {
        const blank = blankBetween(drawn, boundsOf(shadow));
        if (isJoin || place !== made.answer[0]) expect(blank, made.name).toBeGreaterThan(0.5);
        else expect(blank, made.name).toBeLessThan(0);
      }
      for (const model of groupsOf(pageOf(made), 'model')) {
        expect(blankBetween(drawn, boundsOf(model)), made.name).toBeGreaterThan(0.5);
      }
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
