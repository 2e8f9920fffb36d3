// The drawn page measured: two like frames, unchanged places printed alike, nothing touching, the answer marked.
import { describe, expect, test } from 'vitest';
import { blankBetween, boundsOf, groupsOf } from '../../../tests/scene-bounds.ts';
import { testSeed } from '../../../tests/seed.ts';
import type { Bounds } from '../../base/index.ts';
import { type Group, sheetArea } from '../../page/index.ts';
import { draw, room } from './draw.ts';
import { anyTasks, COLOUR, type Made } from './tasks-to-test.ts';

const ALL = anyTasks(80, testSeed('what-changed, drawing'));

function pageOf({ printed, answer }: Made, grownMm: number, withAnswer = false): Group {
  const least = room(printed);
  const size = { widthMm: least.widthMm + grownMm, heightMm: least.heightMm + grownMm };
  return withAnswer ? draw(printed, size, COLOUR, answer) : draw(printed, size, COLOUR);
}

/** The places of each picture with their bounds as seen from the corner of its frame. */
function scenesOf(page: Group): readonly (readonly Bounds[])[] {
  return groupsOf(page, 'scene').map((scene) => {
    const frame = boundsOf(scene);
    return groupsOf(scene, 'place')
      .map(boundsOf)
      .map(({ left, top, right, bottom }) => ({
        left: left - frame.left,
        top: top - frame.top,
        right: right - frame.left,
        bottom: bottom - frame.top,
      }));
  });
}

function areOne(one: Bounds, other: Bounds): boolean {
  const sides = ['left', 'top', 'right', 'bottom'] as const;
  return sides.every((side) => Math.abs(one[side] - other[side]) < 1e-6);
}

describe.each([0, 35])('on the drawn page, %i mm grown', (grownMm) => {
  test('R2 figures that stay are printed in the same spot and size in both pictures', () => {
    for (const made of ALL) {
      const { printed, answer, name } = made;
      const [first = [], second = []] = scenesOf(pageOf(made, grownMm));
      const stays = printed.first.filter((_, place) => !answer.includes(place)).length;
      const same = second.filter((one) => first.some((other) => areOne(one, other))).length;
      expect(same, name).toBeGreaterThanOrEqual(stays);
    }
  });

  test('R8 no two figures of a picture are nearer than 1 mm', () => {
    for (const made of ALL) {
      for (const places of scenesOf(pageOf(made, grownMm))) {
        for (const [index, one] of places.entries()) {
          for (const other of places.slice(index + 1)) {
            expect(blankBetween(one, other), made.name).toBeGreaterThan(1);
          }
        }
      }
    }
  });

  test('R9 the frames are of one size, and figures of two pictures 15 mm apart or more', () => {
    for (const made of ALL) {
      const scenes = groupsOf(pageOf(made, grownMm), 'scene');
      const [one, other] = scenes.map(boundsOf);
      if (!one || !other) throw new Error('not two pictures');
      expect(one.right - one.left, made.name).toBeCloseTo(other.right - other.left, 6);
      expect(one.bottom - one.top, made.name).toBeCloseTo(other.bottom - other.top, 6);
      expect(blankBetween(one, other), made.name).toBeGreaterThanOrEqual(7.9);
      for (const mine of groupsOf(scenes[0] as Group, 'place').map(boundsOf)) {
        for (const theirs of groupsOf(scenes[1] as Group, 'place').map(boundsOf)) {
          expect(blankBetween(mine, theirs), made.name).toBeGreaterThanOrEqual(15);
        }
      }
    }
  });
});

test('R1 the answer marks as many places as differ, all in the second picture', () => {
  for (const made of ALL) {
    const page = pageOf(made, 0, true);
    const [, second] = groupsOf(page, 'scene').map(boundsOf);
    const [marks] = groupsOf(page, 'answer');
    if (!marks || !second) throw new Error(`${made.name}: no answer is drawn`);
    const lines = made.values.response === 'cross' ? 2 : 1;
    expect(marks.children.length, made.name).toBe(lines * made.answer.length);
    const { left, top, right, bottom } = boundsOf(marks);
    const inside =
      left > second.left && top > second.top && right < second.right && bottom < second.bottom;
    expect(inside, made.name).toBe(true);
  }
});

test('every task fits an upright sheet of Letter, and two an upright sheet of A4', () => {
  const [a4, letter] = [sheetArea('A4', 'portrait'), sheetArea('Letter', 'portrait')];
  for (const made of ALL) {
    const { widthMm, heightMm } = room(made.printed);
    expect(widthMm, made.name).toBeLessThanOrEqual(Math.min(a4.width, letter.width));
    expect(heightMm, made.name).toBeLessThanOrEqual((a4.height - 14) / 2);
  }
});
