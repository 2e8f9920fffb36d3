// What sheets take of a house hangs on how they are made, and on what is cut out.
import { expect, test } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import { DEFAULT_PAGE, type Made, type SeededRecipe, type Stock } from '../sheets/index.ts';
import { houseFor, usedBy, usualStickerMm } from './hand-made.ts';
import { makePackAtHand } from './pack-at-hand.ts';
import { usesOf } from './uses.ts';

const seed = testSeed('making');

const PRINTING: Stock = {
  stickers: [
    { colour: 'red', diameterMm: 16, count: 40 },
    { colour: 'blue', diameterMm: 16, count: 40 },
  ],
  crayons: [],
  tools: ['scissors', 'glue'],
  printer: 'colour',
};

function recipe(
  more: Partial<SeededRecipe>,
  activity: 'in-every-box' | 'one-of-each' = 'in-every-box',
): SeededRecipe {
  const parts = [{ activity, step: 1, values: {}, sheets: 1 }];
  return { seed, page: DEFAULT_PAGE, print: 'colour', parts, onlyWith: PRINTING, ...more };
}

function stickersOf(made: Made): number {
  const { onlyWith: _any, ...free } = recipe({ made });
  const pack = makePackAtHand(free);
  if (!pack.ok) throw new Error('no pack');
  const used = usedBy(pack.value.sheets, houseFor(PRINTING, { made }));
  return used.stickers.reduce((sum, { count }) => sum + count, 0);
}

test('dots that an adult sticks on are taken from the house, printed ones are not', () => {
  expect(stickersOf('printed')).toBe(0);
  expect(stickersOf('half-made')).toBeGreaterThan(0);
  expect(stickersOf('by-hand')).toBe(stickersOf('half-made'));
});

test.each(['half-made', 'by-hand'] as const)(
  'a %s pack is made of the colours of the house, or refused',
  (made) => {
    const few = { ...PRINTING, stickers: [{ colour: 'red', diameterMm: 16, count: 3 }] } as const;
    expect(makePackAtHand(recipe({ made, onlyWith: few })).ok).toBe(false);
    expect(makePackAtHand(recipe({ onlyWith: few })).ok).toBe(true);
  },
);

test('pieces to cut take scissors and glue in place of stickers', () => {
  const none = { ...PRINTING, stickers: [] };
  const pack = makePackAtHand(recipe({ toCut: ['pieces'], onlyWith: none }, 'one-of-each'));
  expect(pack.ok && pack.value.toCut).toEqual(['pieces']);
  const without = { ...none, tools: [] };
  expect(
    makePackAtHand(recipe({ toCut: ['pieces'], onlyWith: without }, 'one-of-each')),
  ).toMatchObject({
    ok: false,
    refusals: [{ code: 'not-in-the-house' }],
  });
});

test('what is to be cut out stays when colours give way to the house', () => {
  const pack = makePackAtHand(recipe({ toCut: ['cards'] }, 'one-of-each'));
  expect(pack.ok && pack.value.toCut).toEqual(['cards']);
});

test.each([
  [
    'counters',
    { parts: [{ activity: 'one-of-each', step: 3, values: { response: 'counters' }, sheets: 1 }] },
  ],
  ['pockets', { page: { ...DEFAULT_PAGE, margin: 'pocket' } }],
] as const)(
  '%s that a pack takes are asked of the house, and said where they are missing',
  (tool, facts) => {
    const there = { ...PRINTING, tools: [tool] };
    const pack = makePackAtHand(recipe({ ...facts, onlyWith: there }));
    if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
    expect(usesOf(usedBy(pack.value.sheets, there), there)).toEqual([
      { what: tool, uses: 1, has: 1 },
    ]);
    expect(makePackAtHand(recipe(facts))).toMatchObject({
      ok: false,
      refusals: [{ code: 'not-in-the-house', needs: [{ what: tool }], add: [{ what: tool }] }],
    });
  },
);

test('a paper that a pack takes is asked of a house that says which it has', () => {
  const large = { page: { paper: 'A3', orientation: 'portrait' } } as const;
  const house = { ...PRINTING, papers: ['A4'] } as const;
  expect(makePackAtHand(recipe({ ...large, onlyWith: house }))).toMatchObject({
    ok: false,
    refusals: [{ code: 'not-in-the-house', add: [{ what: 'paper', paper: 'A3' }] }],
  });
  const pack = makePackAtHand(recipe({ ...large, onlyWith: { ...house, papers: ['A4', 'A3'] } }));
  expect(pack.ok).toBe(true);
});

test.each([
  [
    'that there is most of',
    [
      [12, 9],
      [16, 4],
    ],
    12,
  ],
  [
    'that fit a usual dot, before larger ones',
    [
      [25, 90],
      [12, 9],
    ],
    12,
  ],
  [
    'that there are, where all are larger',
    [
      [25, 90],
      [20, 0],
    ],
    25,
  ],
  ['of any size where there are none', [[12, 0]], undefined],
] as const)('dots made by hand are stickers %s', (_, kinds, usual) => {
  const stickers = kinds.map(
    ([diameterMm, count]) => ({ colour: 'red', diameterMm, count }) as const,
  );
  expect(usualStickerMm({ ...PRINTING, stickers })).toBe(usual);
});
