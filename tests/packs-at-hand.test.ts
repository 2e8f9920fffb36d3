// A pack made of what a house has alone lacks nothing, whatever the activity and the house; or it says what would do.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ACTIVITY_IDS, activityOf, type Value } from '../src/activities/index.ts';
import type { Refusal, Thing } from '../src/base/index.ts';
import { COLOUR_NAMES, type ColourName } from '../src/palette/index.ts';
import {
  DEFAULT_PAGE,
  makePack,
  PRINTERS,
  type RecipePart,
  type SeededRecipe,
  type StickerStock,
  type Stock,
  TOOLS,
  type Tool,
} from '../src/sheets/index.ts';
import { isEnough, lackingFor, makePackAtHand, usedBy, usesOf } from '../src/supplies/index.ts';
import { sentenceOf } from '../src/words/index.ts';
import { testSeed } from './seed.ts';

const seed = testSeed('packs at hand');

const stock: fc.Arbitrary<Stock> = fc.record(
  {
    stickers: fc.array(
      fc.record({
        colour: fc.constantFrom(...COLOUR_NAMES),
        diameterMm: fc.integer({ min: 6, max: 30 }),
        count: fc.oneof(fc.integer({ min: 0, max: 40 }), fc.constant(100_000)),
      }),
      { maxLength: 10 },
    ),
    crayons: fc.subarray([...COLOUR_NAMES]),
    tools: fc.subarray([...TOOLS]),
    printer: fc.constantFrom(...PRINTERS),
  },
  { requiredKeys: ['stickers', 'crayons', 'tools'] },
);

/** Some sheets of an activity, with its own response or any other. */
const part: fc.Arbitrary<RecipePart> = fc.constantFrom(...ACTIVITY_IDS).chain((activity) => {
  const { ladder, parameters } = activityOf(activity);
  const responses = parameters.response?.kind === 'choice' ? parameters.response.values : [];
  return fc.record({
    activity: fc.constant(activity),
    step: fc.integer({ min: 1, max: ladder.length }),
    values: fc
      .constantFrom(undefined, ...responses)
      .map((response): Record<string, Value> => (response === undefined ? {} : { response })),
    sheets: fc.integer({ min: 1, max: 3 }),
  });
});

const recipeOf = (parts: readonly RecipePart[], onlyWith: Stock): SeededRecipe => ({
  ...{ seed: 5, page: DEFAULT_PAGE, print: 'colour', parts, onlyWith },
});

const red = (count: number, diameterMm = 16): StickerStock => ({
  colour: 'red',
  diameterMm,
  count,
});
const stickersIn = (colours: readonly ColourName[], diameterMm: number, count: number) =>
  colours.map((colour) => ({ colour, diameterMm, count }));
const houseWith = (stickers: readonly StickerStock[], more: Partial<Stock> = {}): Stock => ({
  ...{ stickers, crayons: [], tools: [], printer: 'colour', ...more },
});
const copies = (values: RecipePart['values'], sheets = 4): RecipePart => ({
  ...{ activity: 'copy-pattern', step: 3, values, sheets },
});

function madeWith(parts: readonly RecipePart[], house: Stock) {
  const made = makePackAtHand(recipeOf(parts, house));
  if (!made.ok) throw new Error(made.refusals.map(sentenceOf).join(' '));
  expect(lackingFor(usedBy(made.value.sheets, house), house)).toEqual({
    ...{ stickers: [], crayons: [], tools: [], papers: [] },
  });
  return made.value.sheets;
}

type NotInTheHouse = Extract<Refusal, { readonly code: 'not-in-the-house' }>;

function refusalWith(parts: readonly RecipePart[], house: Stock): NotInTheHouse {
  const made = makePackAtHand(recipeOf(parts, house));
  const [refusal] = made.ok ? [] : made.refusals;
  if (refusal?.code !== 'not-in-the-house') throw new Error(JSON.stringify(made));
  return refusal;
}

/** The house once it has got what it was asked to. */
function withThings(house: Stock, things: readonly Thing[]): Stock {
  const known = (name: string | undefined) => COLOUR_NAMES.find((each) => each === name) ?? 'red';
  const of = (what: Thing['what']) => things.filter((thing) => thing.what === what);
  return {
    ...house,
    stickers: [
      ...house.stickers,
      ...of('sticker').map(({ colour, diameterMm = 0, count = 0 }) => ({
        ...{ colour: known(colour), diameterMm, count },
      })),
    ],
    crayons: [...house.crayons, ...of('crayon').map(({ colour }) => known(colour))],
    tools: [...house.tools, ...TOOLS.filter((tool: Tool) => of(tool).length > 0)],
  };
}

describe('a pack made of what a house has alone', () => {
  test('lacks nothing, or says in a sentence what is missing, and with that it can be made', () => {
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 2 }), stock, (parts, house) => {
        const recipe = recipeOf(parts, house);
        const made = makePackAtHand(recipe);
        if (made.ok) {
          expect(isEnough(lackingFor(usedBy(made.value.sheets, house), house))).toBe(true);
          const sheets = parts.reduce((sum, each) => sum + each.sheets, 0);
          expect(made.value.sheets).toHaveLength(sheets);
          expect(new Set(made.value.sheets.map(({ code }) => code)).size).toBe(sheets);
          return;
        }
        const [refusal] = made.refusals;
        if (refusal?.code !== 'not-in-the-house') {
          // Values that nothing at all can be made from, as without a stock.
          const { onlyWith: _, ...free } = recipe;
          const print = house.printer === 'grey' ? 'grey' : 'colour';
          expect(makePack({ ...free, print })).toEqual(made);
          return;
        }
        expect(refusal.add.length).toBeGreaterThan(0);
        const sentence = sentenceOf(refusal);
        for (const { what, colour, count } of refusal.add) {
          expect(sentence).toContain(what === 'glue' ? 'glue stick' : what);
          if (colour !== undefined) expect(sentence).toContain(colour);
          if (count !== undefined) expect(sentence).toContain(`${count} ${colour}`);
        }
        expect(makePackAtHand(recipeOf(parts, withThings(house, refusal.add))).ok).toBe(true);
      }),
      { seed, numRuns: 80 },
    );
  });

  test('is the very pack that it is anyway where the house has enough', () => {
    const house = houseWith(stickersIn(COLOUR_NAMES, 16, 1000));
    const { onlyWith: _, ...free } = recipeOf([copies({})], house);
    expect(makePackAtHand({ ...free, onlyWith: house })).toEqual(makePack(free));
  });

  test('is the same again', () => {
    const house = houseWith([...stickersIn(['red', 'blue', 'green'], 13, 30), red(9, 19)]);
    const codes = () => madeWith([copies({})], house).map(({ code }) => code);
    expect(codes()).toEqual(codes());
  });

  test('draws dots at the largest size that the house has stickers for', () => {
    const colours = ['red', 'blue', 'green'] as const;
    const house = houseWith([...stickersIn(colours, 10, 200), ...stickersIn(colours, 19, 200)]);
    for (const { spec } of madeWith([copies({ response: 'sticker' })], house)) {
      expect(spec.values.stickerMm).toBe('19');
    }
  });

  test('keeps to colours of which enough is left over all its sheets', () => {
    const colours = ['red', 'blue', 'green', 'yellow'] as const;
    const house = houseWith(stickersIn(colours, 16, 12));
    const sheets = madeWith([copies({ response: 'sticker' }, 3)], house);
    const uses = usesOf(usedBy(sheets, house), house);
    expect(uses.length).toBeGreaterThan(2);
    for (const { uses: used, has } of uses) expect(used).toBeLessThanOrEqual(has);
  });

  test('asks for another response where stickers or tools for its own are not there, unless a person set it', () => {
    const house = houseWith([], { crayons: [...COLOUR_NAMES] });
    for (const { spec } of madeWith([copies({})], house)) {
      expect(spec.values.response).toBe('colour-in');
    }
    expect(refusalWith([copies({ response: 'sticker' })], house).add[0]?.what).toBe('sticker');
  });

  test('is printed in grey where the printer is grey, and leaves figures free where it prints colours', () => {
    const point: RecipePart = { activity: 'in-every-box', step: 2, values: {}, sheets: 2 };
    for (const { spec } of madeWith([point], houseWith([], { printer: 'grey' }))) {
      expect(spec.print).toBe('grey');
    }
    for (const { spec } of madeWith([point], houseWith([]))) {
      expect(spec).toMatchObject({ print: 'colour' });
      expect(spec.colours).toBeUndefined();
    }
  });

  test('without a printer has dots that are stickers of the house, too', () => {
    const point: RecipePart = { activity: 'in-every-box', step: 1, values: {}, sheets: 2 };
    expect(
      refusalWith([point], houseWith([red(3)], { printer: 'none' })).add.length,
    ).toBeGreaterThan(0);
    const house = houseWith(stickersIn(['red', 'blue', 'yellow'], 13, 90), { printer: 'none' });
    const used = usedBy(madeWith([point], house), house).stickers;
    expect(used.length).toBeGreaterThan(0);
    for (const { diameterMm } of used) expect(diameterMm).toBe(13);
  });

  test('for a group gives each child its sheets from the one house', () => {
    const house = houseWith(stickersIn(['red', 'blue', 'green'], 16, 60));
    const children = [{ name: 'Wren' }, { name: 'Moss' }, { name: 'Fern' }];
    const made = makePackAtHand({ ...recipeOf([copies({}, 1), copies({}, 1)], house), children });
    if (!made.ok) throw new Error(made.refusals.map(sentenceOf).join(' '));
    expect(isEnough(lackingFor(usedBy(made.value.sheets, house), house))).toBe(true);
    const names = made.value.sheets.map(({ child }) => child?.name);
    expect(names).toEqual(['Wren', 'Wren', 'Moss', 'Moss', 'Fern', 'Fern']);
  });
});

describe('a pack that cannot be made so', () => {
  test('says how many sheets can be had instead, and those can', () => {
    const house = houseWith(stickersIn(['red', 'blue', 'green'], 16, 14));
    const asked = copies({ response: 'sticker' }, 9);
    const refusal = refusalWith([asked], house);
    expect(refusal.possible).toBeGreaterThan(0);
    expect(refusal.possible).toBeLessThan(9);
    expect(sentenceOf(refusal)).toMatch(
      /^onlyWith: 9 sheets need \d+ stickers of \d+ mm \(.*\); the house has 42 stickers of 16 mm \(14 red, 14 blue, 14 green\)\. Ask for \d sheets?, or add \d+ stickers? of \d+ mm/,
    );
    expect(madeWith([{ ...asked, sheets: refusal.possible }], house)).toHaveLength(
      refusal.possible,
    );
  });

  test('asks for more of the very kinds that there are, where they would do', () => {
    const house = houseWith(stickersIn(['red', 'blue', 'green'], 10, 6));
    const { add } = refusalWith([copies({ response: 'sticker' }, 2)], house);
    expect(add.length).toBeGreaterThan(0);
    for (const { colour, diameterMm } of add) {
      expect(['red', 'blue', 'green']).toContain(colour);
      expect(diameterMm).toBe(10);
    }
  });

  test('of very many sheets is told by the first hundred', () => {
    const house = houseWith(stickersIn(['red', 'blue'], 16, 20));
    const refusal = refusalWith([copies({ response: 'sticker' }, 5000)], house);
    expect(sentenceOf(refusal)).toMatch(
      /the first 100 of 5000 sheets alone need .* or add at least /,
    );
  });

  test.each([
    ['no colours left', houseWith(stickersIn(['red', 'blue'], 16, 0))],
    ['nothing at all', houseWith([], { printer: 'none' })],
    ['stickers larger than any dot', houseWith(stickersIn(['red', 'blue', 'green'], 100, 100_000))],
    ['one colour in huge numbers', houseWith(Array.from({ length: 200 }, () => red(100_000)))],
  ])('is refused with what would do: %s', (_, house) => {
    const { add, possible } = refusalWith([copies({ response: 'sticker', kinds: 2 })], house);
    expect(possible).toBe(0);
    expect(add.length).toBeGreaterThan(0);
  });
});
