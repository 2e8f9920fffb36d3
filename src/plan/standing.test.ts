// How recorded sheets change what is believed.
import { expect, test } from 'vitest';
import { abilityOf } from '../learner/index.ts';
import { addDays } from './days.ts';
import { newKnown, resultOf, START, WISHES, type withResults } from './known-to-test.ts';
import { newPlanner, settingFor } from './planner.ts';
import { standingOn } from './standing.ts';
import { planToday } from './today.ts';

const planner = newPlanner();
const known = newKnown();
const [sheet] = planToday(planner, known, { ...WISHES, day: START, minutes: 10 }, () => START);
if (!sheet) throw new Error('no plan');
const { skill } = sheet.facts;
const result = resultOf(sheet, known.child.id, START, () => true);
const next = addDays(START, 1);
const meanAfter = (...results: Parameters<typeof withResults>[1]) =>
  abilityOf(standingOn(next, known.child, results, planner.read).belief, skill).mean;

test('one tap for the whole sheet tells something, and less than a tap for each task', () => {
  const before = abilityOf(settingFor(planner, known, next, WISHES).standing.belief, skill).mean;
  const atOnce = meanAfter({ ...result, atOnce: true });
  expect(atOnce).toBeGreaterThan(before);
  expect(meanAfter(result)).toBeGreaterThan(atOnce);
});

test('what was not tried tells nothing', () => {
  const tasks = result.tasks.map(() => ({ outcome: 'not-tried' as const }));
  const { given, belief } = standingOn(next, known.child, [{ ...result, tasks }], planner.read);
  expect(given).toEqual([]);
  expect(belief.skills).toEqual([]);
});

test('help makes a right answer tell less than one alone, and more than not yet', () => {
  const withHelp = result.tasks.map(() => ({ outcome: 'with-help' as const }));
  const notYet = result.tasks.map(() => ({ outcome: 'not-yet' as const }));
  const helped = meanAfter({ ...result, tasks: withHelp, help: 'pointed' });
  expect(helped).toBeLessThan(meanAfter(result));
  expect(helped).toBeGreaterThan(meanAfter({ ...result, tasks: notYet }));
});

test('a younger child starts lower, and one of unknown age lower than one of four', () => {
  const meanOf = (birthMonth?: string) => {
    const child = birthMonth === undefined ? {} : { birthMonth };
    return abilityOf(standingOn(START, child, [], planner.read).belief, skill).mean;
  };
  const means = [meanOf('2023-06'), meanOf(), meanOf('2022-06'), meanOf('2021-06')];
  expect([...means].sort((one, other) => one - other)).toEqual(means);
});
