// What the plan of a week promises.
import { describe, expect, test } from 'vitest';
import { SKILLS } from '../activities/index.ts';
import { addDays } from './days.ts';
import {
  afterDays,
  dayAfter,
  MINUTES,
  newKnown,
  resultOf,
  START,
  WISHES,
  withPlan,
  withResults,
} from './known-to-test.ts';
import { newPlanner } from './planner.ts';
import { planWeek } from './week.ts';

const planner = newPlanner();
const days = Array.from({ length: 5 }, (_, place) => addDays(START, place));
const wanted = { ...WISHES, days, minutes: MINUTES };
const ids = ['fern', 'moss', 'wren', 'alder'];

describe.each(ids)('the week of %s', (id) => {
  const sheets = [...planWeek(planner, newKnown({}, id), wanted).values()].flat();

  test('has no activity twice in a row, from one day to the next either', () => {
    const activities = sheets.map(({ facts }) => facts.activity);
    expect(activities.filter((activity, place) => activity === activities[place - 1])).toEqual([]);
  });

  test('has every skill at least once', () => {
    const skills = new Set(sheets.map(({ facts }) => facts.skill));
    expect([...skills].sort()).toEqual([...SKILLS].sort());
  });

  test('keeps near the minutes of each day', () => {
    for (const plan of planWeek(planner, newKnown({}, id), wanted).values()) {
      const minutes = plan.reduce((sum, { facts }) => sum + facts.minutes, 0);
      expect(minutes).toBeGreaterThan(0.5 * MINUTES);
      expect(minutes).toBeLessThan(1.5 * MINUTES);
    }
  });
});

test('a favoured skill comes more often than without', () => {
  const times = (favoured: ReadonlySet<'memory'>) =>
    ids
      .flatMap((id) => [...planWeek(planner, newKnown({}, id), { ...wanted, favoured }).values()])
      .flat()
      .filter(({ facts }) => facts.skill === 'memory').length;
  expect(times(new Set(['memory']))).toBeGreaterThan(times(new Set()));
});

test('old favourites come once a child has done something well, and are easy for it', () => {
  const known = afterDays(planner, newKnown(), 8, () => 1);
  const start = dayAfter(8);
  const week = planWeek(planner, known, {
    ...wanted,
    days: days.map((_, place) => addDays(start, place)),
  });
  const favourites = [...week.values()].flat().filter(({ why }) => why === 'favourite');
  expect(favourites.length).toBeGreaterThan(0);
  for (const { success } of favourites) expect(success).toBeGreaterThan(0.85);
  const fresh = [...planWeek(planner, newKnown(), wanted).values()].flat();
  expect(fresh.filter(({ why }) => why === 'favourite')).toEqual([]);
});

test('what was left undone comes first', () => {
  const [sheet] = [...planWeek(planner, newKnown(), wanted).values()].flat();
  const code = sheet?.facts.code ?? '';
  const known = withPlan(newKnown(), addDays(START, -1), [{ code, why: 'rested' }]);
  const [first] = [...planWeek(planner, known, wanted).values()].flat();
  expect(first).toMatchObject({ facts: { code }, why: 'moved-on' });
});

test('planned anew, a week keeps what was left undone, and what is done already', () => {
  const yesterday = addDays(START, -1);
  const [undone, ...others] = [...planWeek(planner, newKnown(), wanted).values()].flat();
  const done = others.find(({ facts }) => facts.activity !== undone?.facts.activity);
  if (!undone || !done) throw new Error('expected two sheets');
  const moved = { code: undone.facts.code, why: 'moved-on' } as const;
  const given = { code: done.facts.code, why: 'rested' } as const;
  const planned = withPlan(withPlan(newKnown(), yesterday, [{ ...moved, why: 'rested' }]), START, [
    moved,
    given,
  ]);
  const known = withResults(planned, [resultOf(done, newKnown().child.id, START, () => true)]);
  const favoured = new Set(['memory'] as const);
  const [today = []] = [...planWeek(planner, known, { ...wanted, favoured }).values()];
  expect(today.slice(0, 2).map(({ facts }) => facts.code)).toEqual([given.code, moved.code]);
});

test('a week planned ahead does not take what is still to come for left undone', () => {
  const thisWeek = planWeek(planner, newKnown(), wanted);
  const known = [...thisWeek].reduce(
    (so, [day, sheets]) =>
      withPlan(
        so,
        day,
        sheets.map(({ facts, why }) => ({ code: facts.code, why })),
      ),
    newKnown(),
  );
  const ahead = days.map((day) => addDays(day, 7));
  const next = [...planWeek(planner, known, { ...wanted, days: ahead, today: START }).values()];
  expect(next.flat().filter(({ why }) => why === 'moved-on')).toEqual([]);
  const last = [...thisWeek.values()].at(-1)?.at(-1);
  expect(next[0]?.[0]?.facts.activity).not.toBe(last?.facts.activity);
});
