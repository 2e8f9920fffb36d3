// Plans for a house whose things were counted: never more than there is, and as fit for the child as ever.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import { COLOUR_NAMES } from '../palette/index.ts';
import type { Stock } from '../records/index.ts';
import { gatheredMaterials, makeSheetOfCode, type Sheet } from '../sheets/index.ts';
import { isEnough, lackingFor } from '../supplies/index.ts';
import type { Suggestion } from './course.ts';
import { FEWEST_SHEETS, MOST_SHEETS_A_DAY } from './day-plan.ts';
import { addDays } from './days.ts';
import {
  afterDays,
  dayAfter,
  dayAtNever,
  MINUTES,
  newKnown,
  START,
  WISHES,
} from './known-to-test.ts';
import { newPlanner } from './planner.ts';
import { boundsOf, isSeen } from './suits.ts';
import { planToday } from './today.ts';
import { planWeek } from './week.ts';

const seed = testSeed('plans for a counted house');
const planner = newPlanner();
const days = Array.from({ length: 5 }, (_, place) => addDays(START, place));

const stocks: fc.Arbitrary<Stock> = fc.record(
  {
    stickers: fc.array(
      fc.record({
        colour: fc.constantFrom(...COLOUR_NAMES),
        diameterMm: fc.integer({ min: 8, max: 25 }),
        count: fc.integer({ min: 0, max: 12 }),
      }),
      { maxLength: 8 },
    ),
    crayons: fc.subarray([...COLOUR_NAMES]),
    tools: fc.subarray(['pencil', 'scissors', 'glue', 'counters']),
    printer: fc.constantFrom('colour', 'grey'),
  },
  { requiredKeys: ['stickers', 'crayons', 'tools'] },
);

const someStickers: Stock = {
  stickers: (['red', 'blue', 'green'] as const).map((colour) => ({
    ...{ colour, diameterMm: 12, count: 30 },
  })),
  ...{ crayons: [], tools: [] },
};

function lacks(sheets: readonly Suggestion[], stock: Stock): boolean {
  const materials = gatheredMaterials(sheets.flatMap(({ facts }) => facts.materials));
  return !isEnough(lackingFor(materials, stock));
}

function sheetOf({ facts }: Suggestion): Sheet {
  const made = makeSheetOfCode(facts.code);
  if (!made.ok) throw new Error(facts.code);
  return made.value;
}

describe('a plan for a house whose things were counted', () => {
  test('lacks nothing on any day, and is as long and as fit for the eyes as without', () => {
    fc.assert(
      fc.property(fc.uuid(), stocks, (id, stock) => {
        const facts = { birthMonth: '2022-03', colourVision: 'deutan' } as const;
        const wishes = { ...WISHES, stock, day: START, minutes: MINUTES };
        const plan = planToday(planner, newKnown(facts, id), wishes, dayAtNever);
        expect(plan.length).toBeGreaterThanOrEqual(FEWEST_SHEETS);
        expect(plan.length).toBeLessThanOrEqual(MOST_SHEETS_A_DAY);
        expect(lacks(plan, stock)).toBe(false);
        const bounds = boundsOf(facts, START);
        for (const sheet of plan.map(sheetOf)) {
          expect(isSeen(sheet, bounds)).toBe(true);
          if (stock.printer === 'grey') expect(sheet.spec.print).toBe('grey');
        }
      }),
      { seed, numRuns: 25 },
    );
  });

  test('lacks nothing over a whole week, and is the same again', () => {
    const known = newKnown({ birthMonth: '2022-03' }, 'fern');
    const plan = () =>
      [
        ...planWeek(newPlanner(), known, {
          ...WISHES,
          stock: someStickers,
          days,
          minutes: MINUTES,
        }).values(),
      ].flat();
    const sheets = plan();
    expect(sheets.length).toBeGreaterThanOrEqual(days.length * FEWEST_SHEETS);
    expect(lacks(sheets, someStickers)).toBe(false);
    expect(plan().map(({ facts }) => facts.code)).toEqual(sheets.map(({ facts }) => facts.code));
  });

  test('uses the stickers that are there, in their colours and at a size that they fit', () => {
    const known = afterDays(planner, newKnown({ birthMonth: '2022-03' }, 'moss'), 10, () => 0);
    const from = dayAfter(10);
    const later = Array.from({ length: 5 }, (_, place) => addDays(from, place));
    const week = planWeek(planner, known, {
      ...WISHES,
      stock: someStickers,
      days: later,
      minutes: MINUTES,
    });
    const used = gatheredMaterials(
      [...week.values()].flat().flatMap(({ facts }) => facts.materials),
    );
    expect(used.stickers.length).toBeGreaterThan(0);
    for (const { colour, diameterMm } of used.stickers) {
      expect(['red', 'blue', 'green']).toContain(colour);
      expect(diameterMm).toBeGreaterThanOrEqual(12);
      expect(diameterMm).toBeLessThanOrEqual(16);
    }
  });

  test('goes by the count and not by what was wished before, since there is one truth', () => {
    const supplies = new Set(['scissors', 'glue'] as const);
    const wishes = { ...WISHES, stock: someStickers, supplies, day: START, minutes: MINUTES };
    const plan = planToday(planner, newKnown({}, 'wren'), wishes, dayAtNever);
    const { supplies: _, ...counted } = wishes;
    const same = planToday(planner, newKnown({}, 'wren'), counted, dayAtNever);
    expect(plan.map(({ facts }) => facts.code)).toEqual(same.map(({ facts }) => facts.code));
  });
});
