// What a plan for a day promises, over children of different ages, hands and eyes.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import { ACTIVITY_IDS, activityOf, handLevel } from '../activities/index.ts';
import { SUCCESS_BAND } from '../learner/index.ts';
import { type Child, WRITING_HANDS } from '../records/index.ts';
import { makeSheetOfCode, readCode } from '../sheets/index.ts';
import { FEWEST_SHEETS, MOST_SHEETS_A_DAY } from './day-plan.ts';
import { addDays } from './days.ts';
import {
  afterDays,
  dayAfter,
  dayAtNever,
  MINUTES,
  newKnown,
  resultOf,
  START,
  WISHES,
  withPlan,
  withResults,
} from './known-to-test.ts';
import { newPlanner } from './planner.ts';
import { boundsOf, isSeen } from './suits.ts';
import { movedOn, movesOnTo, notchedSheet, planAnew, planToday, somethingElse } from './today.ts';

const seed = testSeed('today');
const planner = newPlanner();
const wishes = { ...WISHES, day: START, minutes: MINUTES };

const children: fc.Arbitrary<Omit<Child, 'id' | 'nickname'>> = fc.record(
  {
    birthMonth: fc.constantFrom('2023-09', '2022-03', '2021-01', '2017-01'),
    colourVision: fc.constantFrom('normal', 'red-green', 'protan', 'deutan', 'tritan'),
    deeds: fc.constantFrom(['point'], ['point', 'sticker', 'ring'], ['sign-triangle', 'cut']),
    languages: fc.constantFrom(['en'], ['hi', 'en'], ['ar'], ['uk-UA']),
  },
  { requiredKeys: [] },
);

describe('the plan of a day', () => {
  test('has two to four sheets of different activities, each within the hand and seen by the eyes', () => {
    fc.assert(
      fc.property(children, fc.uuid(), (facts, id) => {
        const known = newKnown(facts, id);
        const bounds = boundsOf(facts, START);
        const plan = planToday(planner, known, wishes, dayAtNever);
        expect(plan.length).toBeGreaterThanOrEqual(2);
        expect(plan.length).toBeLessThanOrEqual(MOST_SHEETS_A_DAY);
        expect(new Set(plan.map(({ facts }) => facts.activity)).size).toBe(plan.length);
        for (const { facts: sheet } of plan) {
          const made = makeSheetOfCode(sheet.code);
          if (!made.ok) throw new Error(sheet.code);
          expect(isSeen(made.value, bounds)).toBe(true);
          const activity = activityOf(sheet.activity);
          const hands = made.value.tasks.map(({ printed }) => activity.features(printed).hand ?? 0);
          expect(Math.max(...hands)).toBeLessThanOrEqual(bounds.hand);
        }
      }),
      { seed, numRuns: 12 },
    );
  });

  test('is the same whenever it is made, and stays while its own sheets are being recorded', () => {
    const known = afterDays(planner, newKnown(), 3, () => 0);
    const day = dayAfter(3);
    const plan = planToday(planner, known, { ...wishes, day }, dayAtNever);
    const [first] = plan;
    if (!first) throw new Error('no plan');
    const recorded = withResults(known, [resultOf(first, known.child.id, day, () => false)]);
    expect(planToday(newPlanner(), recorded, { ...wishes, day }, dayAtNever)).toEqual(plan);
  });

  test('starts a child of whom nothing is known among the easiest sheets', () => {
    for (const { facts, why } of planToday(planner, newKnown(), wishes, dayAtNever)) {
      expect(why).toBe('first-of-skill');
      expect(facts.logits).toBeLessThan(-2);
    }
  });

  test('aims at the band of success once something is known', () => {
    const known = afterDays(planner, newKnown(), 6, () => 0);
    const plan = planToday(planner, known, { ...wishes, day: dayAfter(6) }, dayAtNever);
    for (const { why, success } of plan) {
      // A sheet differs a little from the mean of its rung; favourites are meant to be easier.
      expect(success).toBeGreaterThan(SUCCESS_BAND.least - 0.07);
      if (why !== 'favourite') expect(success).toBeLessThan(SUCCESS_BAND.most + 0.05);
    }
  });

  test('uses only what is in the house', () => {
    const supplies = new Set(['pencil'] as const);
    for (const id of ['a', 'b', 'c', 'd']) {
      const plan = planToday(planner, newKnown({}, id), { ...wishes, supplies }, dayAtNever);
      const kinds = plan.flatMap(({ facts }) => facts.materials.map(({ kind }) => kind));
      // Paper is no matter of wishes: which there is, a count says.
      expect(kinds.filter((kind) => kind !== 'pencil' && kind !== 'paper')).toEqual([]);
    }
  });

  test('is laid out for the left hand where that one writes, and for no other', () => {
    for (const writingHand of WRITING_HANDS) {
      const known = newKnown({ writingHand });
      const [first, ...more] = planToday(planner, known, wishes, dayAtNever);
      if (!first) throw new Error('no plan');
      const { code } = first.facts;
      const other = somethingElse(planner, known, wishes, code, new Set());
      const anew = planAnew(planner, known, wishes, [code], new Set());
      const harder = notchedSheet(planner, known, wishes, code, 'harder');
      const notch = harder.ok && harder.value ? [harder.value] : [];
      const sheets = [first, ...more, ...(other ? [other] : []), ...anew, ...notch];
      expect(sheets.length).toBeGreaterThan(3);
      const wanted = writingHand === 'left' ? 'left' : undefined;
      for (const { facts } of sheets) {
        const read = readCode(facts.code);
        expect(read.ok && read.value.hand, writingHand).toBe(wanted);
        expect(facts.hand).toBe(wanted);
      }
    }
  });

  test('asks for scissors only where the hand is said to cut', () => {
    expect(boundsOf({ deeds: ['sign-triangle'] }, START).cuts).toBe(false);
    expect(boundsOf({ deeds: ['cut'] }, START)).toMatchObject({
      cuts: true,
      hand: handLevel('cut'),
    });
  });
});

describe('what was not done', () => {
  const day = addDays(START, 1);
  const plan = planToday(planner, newKnown(), wishes, dayAtNever);
  const codes = plan.map(({ facts }) => facts.code);
  const planned = withPlan(
    newKnown(),
    START,
    plan.map(({ facts, why }) => ({ code: facts.code, why })),
  );
  const [first] = plan;

  test('leads the next day, and not what was done', () => {
    if (!first) throw new Error('no plan');
    const done = withResults(planned, [resultOf(first, planned.child.id, START, () => true)]);
    const next = planToday(planner, done, { ...wishes, day }, dayAtNever);
    expect(next.slice(0, 2)).toMatchObject(
      codes.slice(1, 3).map((code) => ({ facts: { code }, why: 'moved-on' })),
    );
  });

  test('leads a plan that was made before, and changes none that was made on the day', () => {
    const both = withPlan(planned, day, [{ code: codes[3] ?? '', why: 'rested' }]);
    const before = planToday(planner, both, { ...wishes, day }, () => START);
    expect(before.map(({ facts }) => facts.code)).toEqual([codes[0], codes[1], codes[3]]);
    const onTheDay = planToday(planner, both, { ...wishes, day }, () => day);
    expect(onTheDay.map(({ facts }) => facts.code)).toEqual([codes[3]]);
  });

  test('and was put off to a day leads that day, and the rest of it is planned', () => {
    const both = withPlan(planned, day, [{ code: codes[3] ?? '', why: 'moved-on' }]);
    const next = planToday(planner, both, { ...wishes, day }, () => START);
    expect(next.slice(0, 3).map(({ facts }) => facts.code)).toEqual([codes[3], codes[0], codes[1]]);
    const nothing = withPlan(newKnown(), day, []);
    expect(planToday(planner, nothing, { ...wishes, day }, () => START)).toEqual([]);
    const alone = withPlan(newKnown(), day, [{ code: codes[0] ?? '', why: 'moved-on' }]);
    const filled = planToday(planner, alone, { ...wishes, day }, () => START);
    expect(filled.length).toBeGreaterThanOrEqual(FEWEST_SHEETS);
    expect(filled[0]?.facts.code).toBe(codes[0]);
  });

  test('leads still once it is done on the day, and no other sheet comes for it', () => {
    if (!first) throw new Error('no plan');
    const next = planToday(planner, planned, { ...wishes, day }, dayAtNever);
    const done = withResults(planned, [resultOf(first, planned.child.id, day, () => true)]);
    expect(planToday(planner, done, { ...wishes, day }, dayAtNever)).toEqual(next);
  });

  test('is told to move on to where it will be met again, today at the earliest', () => {
    const later = addDays(day, 2);
    const both = withPlan(
      withPlan(planned, day, [{ code: codes[3] ?? '', why: 'rested' }]),
      later,
      [{ code: codes[2] ?? '', why: 'moved-on' }],
    );
    const told = (dayMade: string) => codes.map(movesOnTo(both, day, () => dayMade));
    expect(told(START)).toEqual([day, day, later, day]);
    expect(told(day)).toEqual([undefined, undefined, later, day]);
  });

  test('is forgotten after a week', () => {
    expect(movedOn(planned, addDays(START, 7))).toHaveLength(2);
    expect(movedOn(planned, addDays(START, 8))).toEqual([]);
  });
});

describe('a change', () => {
  const [sheet] = planToday(planner, newKnown(), wishes, dayAtNever);
  if (!sheet) throw new Error('no plan');
  const { code, activity, logits } = sheet.facts;

  test('to something else is of none of the activities that are not wanted', () => {
    const without = new Set([activity]);
    const other = somethingElse(planner, newKnown(), wishes, code, without);
    expect(other && !without.has(other.facts.activity)).toBe(true);
  });

  test('of the whole day is of none of the activities that are not wanted, and of them where all is', () => {
    const known = newKnown();
    const before = planToday(planner, known, wishes, dayAtNever).map(({ facts }) => facts);
    const codes = before.map(({ code }) => code);
    const without = new Set(before.map(({ activity }) => activity));
    const other = planAnew(planner, known, wishes, codes, without).map(({ facts }) => facts);
    expect(other.length).toBeGreaterThanOrEqual(FEWEST_SHEETS);
    expect(other.filter(({ activity }) => without.has(activity))).toEqual([]);
    const again = planAnew(planner, known, wishes, codes, new Set(ACTIVITY_IDS));
    expect(again.length).toBeGreaterThanOrEqual(FEWEST_SHEETS);
    expect(again.map(({ facts }) => facts.code)).not.toEqual(codes);
  });

  test('to harder is harder, of the same activity and content', () => {
    const harder = notchedSheet(planner, newKnown(), wishes, code, 'harder');
    expect(harder).toMatchObject({
      ok: true,
      value: { facts: { activity, content: sheet.facts.content }, why: 'asked' },
    });
    expect(harder.ok && harder.value && harder.value.facts.logits > logits).toBe(true);
  });
});
