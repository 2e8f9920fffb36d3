// The drawn page: one scale for key and items, clear gaps, targets large enough, nothing outside.
import { describe, expect, test } from 'vitest';
import { boundsOf, groupsOf } from '../../../tests/scene-bounds.ts';
import type { Bounds } from '../../base/index.ts';
import type { Group } from '../../page/index.ts';
import { draw, room } from './draw.ts';
import { LADDER } from './ladder.ts';
import { materials } from './materials.ts';
import { COLOUR, GREY, goodValues, type Made, made, valuesAt } from './tasks-to-test.ts';
import { WORDS } from './words.ts';

const A4_PORTRAIT = { widthMm: 186, heightMm: 254 };

/** The distance of two rectangles, 0 where they touch or overlap. */
function gapMm(one: Bounds, other: Bounds): number {
  const across = Math.max(0, one.left - other.right, other.left - one.right);
  const down = Math.max(0, one.top - other.bottom, other.top - one.bottom);
  return Math.sqrt(across * across + down * down);
}

const PAGES = [
  ...LADDER.map((_, index) => ({ seed: 5, values: valuesAt(index + 1) })),
  ...goodValues(30, COLOUR).map(([seed, values]) => ({ seed, values })),
].map((page) => ({ ...page, ...made(page.values, page.seed) }));

describe('R13 the page says the same', () => {
  test('R13 every item is drawn in the size of its entry’s figure in the key', () => {
    for (const style of [COLOUR, GREY]) {
      for (const { seed, values } of PAGES) {
        if (values.vary !== 'none') continue;
        const { printed, answer } = made(values, seed, style);
        const drawing = draw(printed, A4_PORTRAIT, style);
        const figures = (role: string) =>
          groupsOf(drawing, role).map((unit) => boundsOf(groupsOf(unit, 'figure')[0] as Group));
        const [entries, items] = [figures('entry'), figures('item')];
        answer.forEach((place, item) => {
          const [one, other] = [entries[place] as Bounds, items[item] as Bounds];
          expect(one.right - one.left, `seed ${seed}`).toBeCloseTo(other.right - other.left, 5);
          expect(one.bottom - one.top, `seed ${seed}`).toBeCloseTo(other.bottom - other.top, 5);
        });
      }
    }
  });

  test('R13 neighbours never touch: 4 mm lie between entries, between items, and more below the key', () => {
    for (const { seed, printed, answer } of PAGES) {
      for (const size of [room(printed), A4_PORTRAIT]) {
        const drawing = draw(printed, size, COLOUR, answer);
        const [entries, items] = ['entry', 'item'].map((role) => groupsOf(drawing, role));
        for (const row of [entries, items]) {
          const bounds = (row ?? []).map(boundsOf);
          bounds.forEach((one, index) => {
            for (const other of bounds.slice(index + 1)) {
              expect(gapMm(one, other), `seed ${seed}`).toBeGreaterThanOrEqual(4);
            }
          });
        }
        const key = boundsOf(groupsOf(drawing, 'key')[0] as Group);
        const below = boundsOf(groupsOf(drawing, 'items')[0] as Group);
        expect(below.top - key.bottom, `seed ${seed}`).toBeGreaterThanOrEqual(8);
      }
    }
  });

  test('R13 what is worked on is at least 12 mm, however tight the room', () => {
    for (const { seed, printed, answer } of PAGES) {
      const isRinged = printed.key[0]?.response.kind === 'ring';
      const drawing = draw(printed, room(printed), COLOUR, ...(isRinged ? [answer] : []));
      for (const item of groupsOf(drawing, 'item')) {
        const { left, top, right, bottom } = boundsOf(item);
        expect(Math.max(right - left, bottom - top), `seed ${seed}`).toBeGreaterThanOrEqual(12);
      }
    }
  });

  test('R13 a figure to colour in is at least 25 mm on the first steps', () => {
    for (const step of [2, 3, 4, 5]) {
      const { printed } = made(valuesAt(step), 1);
      for (const item of groupsOf(draw(printed, A4_PORTRAIT, COLOUR), 'item')) {
        const { left, top, right, bottom } = boundsOf(item);
        expect(Math.max(bottom - top, right - left), `step ${step}`).toBeGreaterThanOrEqual(25);
      }
    }
  });

  test('R13 nothing is drawn outside the room, however tight, in colour and in grey', () => {
    for (const { seed, printed, answer } of PAGES) {
      const size = room(printed);
      for (const style of [COLOUR, GREY]) {
        const { left, top, right, bottom } = boundsOf(draw(printed, size, style, answer));
        expect(Math.min(left, top), `seed ${seed}`).toBeGreaterThanOrEqual(-0.02);
        expect(right, `seed ${seed}`).toBeLessThanOrEqual(size.widthMm + 0.02);
        expect(bottom, `seed ${seed}`).toBeLessThanOrEqual(size.heightMm + 0.02);
      }
    }
  });

  test('R13 the key is a finished example: a page of answers repeats it item by item', () => {
    const { printed, answer } = made(valuesAt(2), 4);
    const drawing = draw(printed, A4_PORTRAIT, COLOUR, answer);
    const alts = (role: string) =>
      groupsOf(drawing, role).map((unit) => groupsOf(unit, 'figure').map(({ alt }) => alt));
    const [entries, items] = [alts('entry'), alts('item')];
    expect(items).toEqual(answer.map((place) => entries[place]));
  });

  test('a task written by hand, without columns or sticker size, is drawn too', () => {
    const { printed, answer }: Made = made(valuesAt(1), 2);
    const bare = { key: printed.key, items: printed.items };
    const size = room(bare);
    expect(boundsOf(draw(bare, size, COLOUR, answer)).right).toBeLessThanOrEqual(size.widthMm);
  });
});

describe('materials', () => {
  test('stickers are counted by colour, and their sum is the number of items', () => {
    const { printed, answer } = made(valuesAt(1, { entries: 3, items: 10, stickerMm: 15 }), 3);
    const stickers = materials(printed, answer).flatMap((material) =>
      material.kind === 'sticker' ? [material] : [],
    );
    expect(stickers.length).toBe(3);
    expect(stickers.map(({ count }) => count).sort()).toEqual([3, 3, 4]);
    expect(stickers.every(({ diameterMm }) => diameterMm === 15)).toBe(true);
  });

  test('a ring wants one crayon for each colour of the key, a sign only a pencil', () => {
    const ring = made(valuesAt(6), 3);
    expect(materials(ring.printed, ring.answer).map(({ kind }) => kind)).toEqual([
      'crayon',
      'crayon',
      'crayon',
    ]);
    const sign = made(valuesAt(8), 3);
    expect(materials(sign.printed, sign.answer)).toEqual([{ kind: 'pencil' }]);
  });
});

describe('words', () => {
  test('the child is told to look past what varies, and only then', () => {
    const first = LADDER.findIndex(({ values }) => values.vary === 'size') + 1;
    const steady = made(valuesAt(first - 1), 1).printed;
    const varied = made(valuesAt(first), 1).printed;
    expect(WORDS.en.say(steady).join(' ')).not.toMatch(/Never mind/);
    expect(WORDS.en.say(varied).join(' ')).toMatch(/Never mind the size/);
  });

  test('the description does not say what the figures get', () => {
    const { printed } = made(valuesAt(2), 1);
    for (const { response } of printed.key) {
      if (response.kind !== 'colour-in') throw new Error('step 2 colours in');
      expect(WORDS.en.describe(printed)).not.toContain(response.colour);
    }
  });

  test('two sizes are called big and small', () => {
    const { printed, answer } = made(valuesAt(2, { content: 'sizes', response: 'ring' }), 1);
    expect(WORDS.en.answer(printed, answer)).toMatch(/big .*small|small .*big/);
  });
});
