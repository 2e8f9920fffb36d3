// The drawn page: figures large enough, apart from each other, inside their place; the answer marks the odd one alone.
import { describe, expect, test } from 'vitest';
import { boundsOf, groupsOf } from '../../../tests/scene-bounds.ts';
import type { Bounds } from '../../base/index.ts';
import type { Group } from '../../page/index.ts';
import { draw } from './draw.ts';
import { materialsOf } from './materials.ts';
import { measuresOf, room } from './room.ts';
import { COLOUR, GREY, goodValues, made, valuesAt } from './tasks-to-test.ts';
import { WORDS } from './words.ts';

/** The distance of two rectangles, 0 where they touch or overlap. */
function gapMm(one: Bounds, other: Bounds): number {
  const across = Math.max(0, one.left - other.right, other.left - one.right);
  const down = Math.max(0, one.top - other.bottom, other.top - one.bottom);
  return Math.sqrt(across * across + down * down);
}

const PAGES = goodValues(60).map(([seed, values]) => ({ seed, ...made(values, seed) }));

describe('R12 the page is calm', () => {
  test('R12 cells are at least 16 mm, and the smallest of several sizes 12 mm', () => {
    for (const { seed, printed } of PAGES) {
      const { figureMm } = measuresOf(printed);
      expect(figureMm, `seed ${seed}`).toBeGreaterThanOrEqual(16);
      const least = Math.min(...printed.figures.map(({ size = 1 }) => size));
      expect(figureMm * least, `seed ${seed}`).toBeGreaterThanOrEqual(11.99);
    }
  });

  test('R12 figures keep 2.5 mm between them, however tight the room', () => {
    for (const { seed, printed } of PAGES) {
      const drawn = groupsOf(draw(printed, room(printed), COLOUR), 'figure').map(boundsOf);
      expect(drawn.length).toBe(printed.figures.length);
      drawn.forEach((one, index) => {
        for (const other of drawn.slice(index + 1)) {
          expect(gapMm(one, other), `seed ${seed}`).toBeGreaterThanOrEqual(2.5);
        }
      });
    }
  });

  test('R12 a ring goes round the odd one and touches no other, in colour and in grey', () => {
    for (const { seed, printed, answer } of PAGES) {
      const ringed = { ...printed, response: 'ring' as const };
      for (const style of [COLOUR, GREY]) {
        const drawing = draw(ringed, room(ringed), style, answer);
        const ring = boundsOf(groupsOf(drawing, 'answer')[0] as Group);
        groupsOf(drawing, 'figure').forEach((figure, place) => {
          const bounds = boundsOf(figure);
          const isInside = bounds.left >= ring.left && bounds.right <= ring.right;
          if (place === answer.odd) expect(isInside, `seed ${seed}`).toBe(true);
          else expect(gapMm(bounds, ring), `seed ${seed}`).toBeGreaterThan(0);
        });
      }
    }
  });

  test('R12 nothing is drawn outside the room', () => {
    for (const { seed, printed, answer } of PAGES) {
      const size = room(printed);
      const { left, top, right, bottom } = boundsOf(draw(printed, size, GREY, answer));
      expect(Math.min(left, top), `seed ${seed}`).toBeGreaterThanOrEqual(-0.02);
      expect(right, `seed ${seed}`).toBeLessThanOrEqual(size.widthMm + 0.02);
      expect(bottom, `seed ${seed}`).toBeLessThanOrEqual(size.heightMm + 0.02);
    }
  });

  test('a page written by hand, with figures alone, is drawn in one row', () => {
    const { figures } = made(valuesAt(2), 3).printed;
    const tops = groupsOf(draw({ figures }, room({ figures }), COLOUR), 'figure').map(
      (figure) => boundsOf(figure).top,
    );
    expect(new Set(tops.map((top) => top.toFixed(3))).size).toBe(1);
  });
});

describe('materials and words', () => {
  test('a sticker has a colour that no figure has; ring and cross want a pencil; a finger nothing', () => {
    for (const { printed } of PAGES) {
      const [sticker] = materialsOf({ ...printed, response: 'sticker' });
      if (sticker?.kind !== 'sticker') throw new Error('expected a sticker');
      expect(printed.figures.map(({ colour }) => colour)).not.toContain(sticker.colour);
      expect(materialsOf({ ...printed, response: 'cross' })).toEqual([{ kind: 'pencil' }]);
      expect(materialsOf({ ...printed, response: 'point' })).toEqual([]);
    }
  });

  test('the answer tells the place and what there is no other of', () => {
    const figures = (['red', 'red', 'blue'] as const).map((colour) => ({ colour }));
    expect(WORDS.en.answer({ figures }, { odd: 2 })).toBe(
      'Number 3, the blue circle, does not belong: there is no other of this colour.',
    );
  });

  test('mirrors are said to be very hard', () => {
    expect(WORDS.en.parameters.mirrors.help).toMatch(/very hard/i);
  });
});
