// What the stock says after sheets were given, and what a pack lacks.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import { COLOUR_NAMES } from '../palette/index.ts';
import { type Entry, type StickerStock, viewOf } from '../records/index.ts';
import { DEFAULT_PAGE, makeSheet, type PackMaterials } from '../sheets/index.ts';
import { isEnough, lackingFor, materialsReader, stockNow } from './stock.ts';

const seed = testSeed('stock');

function stickerSheet() {
  const made = makeSheet({
    ...{ activity: 'in-every-box', step: 2, values: { response: 'sticker' }, seed: 4, tasks: 2 },
    page: DEFAULT_PAGE,
    print: 'colour',
  });
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  return made.value;
}

const { code } = stickerSheet();
const materialsOf = materialsReader();
const used = materialsOf(code)?.stickers ?? [];
const id = (n: number) => `0199c7f2-8e00-7000-8000-${String(n).padStart(12, '0')}`;
const counted: Entry = {
  ...{ id: id(2), at: 2, kind: 'stock', crayons: [], tools: ['pencil'] },
  stickers: used.map((sticker) => ({ ...sticker, count: 10 })),
};
const child: Entry = { id: id(1), at: 1, kind: 'child', child: id(1), nickname: 'Fern' };
const given = (n: number): Entry => ({
  ...{ id: id(n), at: n, kind: 'result', child: id(1), code, day: '2026-03-09' },
  tasks: [{ outcome: 'right' }, { outcome: 'right' }],
});
const undone = (n: number, entry: number): Entry => ({
  ...{ id: id(n), at: n, kind: 'undone', entry: id(entry) },
});

function countsAfter(...entries: readonly Entry[]): readonly number[] {
  const { stock } = viewOf([child, counted, ...entries]);
  if (!stock) throw new Error('no stock');
  return stockNow(stock, materialsOf).stickers.map(({ count }) => count);
}

describe('the stock', () => {
  test('goes down by the stickers of each sheet that is recorded, and undoing puts them back', () => {
    expect(used.length).toBeGreaterThan(0);
    const once = used.map(({ count }) => 10 - count);
    expect(countsAfter(given(3))).toEqual(once);
    expect(countsAfter(given(3), undone(4, 3))).toEqual(used.map(() => 10));
    expect(countsAfter(given(3), undone(4, 3), undone(5, 4))).toEqual(once);
  });

  test('does not take a sheet that was recorded before the count', () => {
    const { stock } = viewOf([child, { ...given(3), id: id(0) }, counted]);
    expect(stock?.givenSince).toEqual([]);
  });

  test('never falls below none', () => {
    expect(Math.min(...countsAfter(...[3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13].map(given)))).toBe(0);
  });
});

const sticker = fc.record({
  colour: fc.constantFrom(...COLOUR_NAMES),
  diameterMm: fc.integer({ min: 8, max: 25 }),
  count: fc.integer({ min: 0, max: 30 }),
});
const nothing: PackMaterials = { stickers: [], crayons: [], tools: [], papers: [] };

describe('what a pack lacks', () => {
  test('is nothing where the house has just what it needs', () => {
    fc.assert(
      fc.property(fc.array(sticker, { maxLength: 6 }), (stickers: readonly StickerStock[]) => {
        const lacking = lackingFor({ ...nothing, stickers }, { stickers, crayons: [], tools: [] });
        expect(isEnough(lacking)).toBe(true);
      }),
      { seed },
    );
  });

  test('counts each sticker once, however many kinds of dots it would fit', () => {
    const dots: readonly StickerStock[] = [
      { colour: 'red', diameterMm: 15, count: 5 },
      { colour: 'red', diameterMm: 13, count: 5 },
    ];
    const stock = {
      ...{
        stickers: [{ colour: 'red', diameterMm: 13, count: 7 }] as const,
        crayons: [],
        tools: [],
      },
    };
    expect(lackingFor({ ...nothing, stickers: dots }, stock).stickers).toEqual([
      { colour: 'red', diameterMm: 13, count: 3 },
    ]);
  });

  test('names a sticker that is larger than its dot, crayons and tools that are not there', () => {
    const stock = {
      ...{
        stickers: [{ colour: 'red', diameterMm: 20, count: 9 }] as const,
        tools: ['glue'] as const,
      },
      crayons: ['blue'] as const,
    };
    const needs: PackMaterials = {
      stickers: [{ colour: 'red', diameterMm: 15, count: 4 }],
      crayons: ['blue', 'green'],
      tools: ['pencil', 'glue'],
      papers: ['A4', 'A5'],
    };
    expect(lackingFor(needs, stock)).toEqual({
      stickers: [{ colour: 'red', diameterMm: 15, count: 4 }],
      ...{ crayons: ['green'], tools: ['pencil'], papers: [] },
    });
  });

  test.each([
    ['any where it was not said', undefined, ['A3', 'A4'], []],
    ['none where it is there', ['A4'], ['A4'], []],
    ['the one that is not there', ['Letter'], ['A4'], ['A4']],
    ['none of half-size sheets, which come two on one', ['A4'], ['A5'], []],
  ] as const)('names of papers %s', (_, papers, taken, missing) => {
    const stock = { stickers: [], crayons: [], tools: [], ...(papers && { papers }) };
    expect(lackingFor({ ...nothing, papers: taken }, stock).papers).toEqual(missing);
  });
});
