// The drawn page measured: the fold in the middle, the frame above, the choices below, one true size.
import { describe, expect, test } from 'vitest';
import { boundsOf, groupsOf } from '../../../tests/scene-bounds.ts';
import { testSeed } from '../../../tests/seed.ts';
import { HOME_PAPERS, ORIENTATIONS, sheetArea } from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { draw, room } from './draw.ts';
import { anyTasks, COLOUR, type Made } from './tasks-to-test.ts';

const ALL = anyTasks(150, testSeed('look-and-remember, drawing'));
const AREAS = HOME_PAPERS.flatMap((paper) =>
  ORIENTATIONS.map((orientation) => sheetArea(paper, orientation)),
);

/** At its least size, and filling each page. */
function sizesFor({ printed }: Made): readonly Size[] {
  return [
    room(printed),
    ...AREAS.map(({ width, height }) => ({ widthMm: width, heightMm: height })),
  ];
}

describe('R8 on the drawn page', () => {
  test('the frame is 5 mm or more above the fold, and every choice as far below', () => {
    for (const made of ALL) {
      for (const size of sizesFor(made)) {
        const page = draw(made.printed, size, COLOUR);
        const fold = size.heightMm / 2;
        const [frame] = groupsOf(page, 'frame').map(boundsOf);
        expect(frame?.bottom ?? fold, made.name).toBeLessThan(fold - 5);
        expect(frame?.top ?? -1, made.name).toBeGreaterThanOrEqual(0);
        const choices = groupsOf(page, 'choice').map(boundsOf);
        expect(choices.length, made.name).toBe(made.values.choices);
        for (const { top, bottom } of choices) {
          expect(top, made.name).toBeGreaterThan(fold + 5);
          expect(bottom, made.name).toBeLessThanOrEqual(size.heightMm);
        }
      }
    }
  });

  test('the fold goes right across, in the middle of the height', () => {
    for (const made of ALL.slice(0, 20)) {
      for (const size of sizesFor(made)) {
        const [fold] = groupsOf(draw(made.printed, size, COLOUR), 'fold').map(boundsOf);
        if (!fold) throw new Error('no fold is drawn');
        expect(fold.left, made.name).toBeLessThan(1);
        expect(fold.right, made.name).toBeGreaterThan(size.widthMm - 1);
        expect((fold.top + fold.bottom) / 2, made.name).toBeCloseTo(size.heightMm / 2, -1);
        expect(fold.bottom - fold.top, made.name).toBeLessThan(5);
      }
    }
  });
});

test('R9 every figure is as large below as in the frame, and choices stand apart', () => {
  for (const made of ALL) {
    const page = draw(made.printed, room(made.printed), COLOUR);
    const [models, choices] = [groupsOf(page, 'seen'), groupsOf(page, 'choice')].map((groups) =>
      groups.map(boundsOf),
    );
    for (const place of made.answer) {
      const look = JSON.stringify(made.printed.choices[place]);
      const model = models?.[made.printed.set.findIndex((one) => JSON.stringify(one) === look)];
      const choice = choices?.[place];
      if (!model || !choice) throw new Error(`${made.name}: a figure is not drawn`);
      expect(choice.right - choice.left, made.name).toBeCloseTo(model.right - model.left, 6);
    }
    for (const [index, one] of (choices ?? []).entries()) {
      for (const other of (choices ?? []).slice(index + 1)) {
        const [across, down] = [
          Math.max(one.left - other.right, other.left - one.right),
          Math.max(one.top - other.bottom, other.top - one.bottom),
        ];
        expect(Math.max(across, down), made.name).toBeGreaterThan(4);
      }
    }
  }
});

test('R11 one task fits every page of a home printer, and no such page takes two', () => {
  for (const { printed, name } of ALL) {
    const { widthMm, heightMm } = room(printed);
    for (const { width, height } of AREAS) {
      expect(widthMm, name).toBeLessThanOrEqual(width);
      expect(heightMm, name).toBeLessThanOrEqual(height);
      expect(2 * widthMm, name).toBeGreaterThan(width);
      expect(2 * heightMm, name).toBeGreaterThan(height - 14);
    }
  }
});

test('R1 the answer has a ring for each that was in the frame, below the fold', () => {
  for (const { printed, answer, name } of ALL) {
    const size = room(printed);
    const [rings] = groupsOf(draw(printed, size, COLOUR, answer), 'answer');
    expect(rings?.children.length, name).toBe(answer.length);
    if (rings) expect(boundsOf(rings).top, name).toBeGreaterThan(size.heightMm / 2);
  }
});
