// What the plan of a year promises.
import { describe, expect, test } from 'vitest';
import { weekdayOf } from './days.ts';
import { afterDays, dayAfter, newKnown, WISHES } from './known-to-test.ts';
import { newPlanner } from './planner.ts';
import { abilityForStep } from './step-ability.ts';
import { planYear, type YearWeek, type YearWishes } from './year.ts';

const planner = newPlanner();
const { page, print } = WISHES;
const wishes: YearWishes = { page, print, from: '2026-09-09', weeks: 12, sheets: 5 };

function yearOf(known = newKnown(), wanted: Partial<YearWishes> = {}): readonly YearWeek[] {
  return [...planYear(planner, known, { ...wishes, ...wanted })];
}

function codesOf(weeks: readonly YearWeek[]): readonly string[] {
  return weeks.flatMap(({ sheets }) => sheets.map(({ planned }) => planned.facts.code));
}

function mean(amounts: readonly number[]): number {
  return amounts.reduce((sum, amount) => sum + amount, 0) / amounts.length;
}

describe.each(['fern', 'moss', 'wren'])('the year of %s', (id) => {
  const known = newKnown({ birthMonth: '2022-05' }, id);
  const weeks = yearOf(known);
  const sheets = weeks.flatMap((week) => week.sheets);

  test('has every week its sheets, in order, from Monday to Friday, the first on the week of the day', () => {
    expect(weeks.map(({ week }) => week)).toEqual(Array.from({ length: 12 }, (_, at) => at + 1));
    expect(weeks.map((week) => week.sheets.length)).toEqual(weeks.map(() => wishes.sheets));
    const days = sheets.map(({ day }) => day);
    expect(days).toEqual([...days].sort());
    expect(days[0]).toBe('2026-09-07');
    expect(Math.max(...days.map(weekdayOf))).toBeLessThanOrEqual(4);
  });

  test('has no activity twice in a row and no sheet twice', () => {
    const activities = sheets.map(({ planned }) => planned.facts.activity);
    expect(activities.filter((activity, at) => activity === activities[at - 1])).toEqual([]);
    expect(new Set(codesOf(weeks)).size).toBe(sheets.length);
  });

  test('is as hard at its end as at its beginning, since nothing was learnt', () => {
    const successes = weeks.map((week) => mean(week.sheets.map(({ planned }) => planned.success)));
    for (const success of successes) {
      expect(success).toBeGreaterThan(0.75);
      expect(success).toBeLessThan(0.9);
    }
  });

  test('keeps its weeks when more are asked for', () => {
    const longer = yearOf(known, { weeks: 14 });
    expect(codesOf(longer.slice(0, 12))).toEqual(codesOf(weeks));
  });

  test('is varied: contents of an activity follow each other', () => {
    const contents = new Set(
      sheets.map(({ planned: { facts } }) => `${facts.activity} ${facts.content}`),
    );
    expect(contents.size).toBeGreaterThan(0.6 * sheets.length);
  });
});

test('two children of one age have the same year until the first of them is a year older', () => {
  // Three years old on the first day both, and able; four in November and in May.
  const older = yearOf(newKnown({ birthMonth: '2022-11' }), { ability: 1 });
  const younger = yearOf(newKnown({ birthMonth: '2023-05' }), { ability: 1 });
  const before = (weeks: readonly YearWeek[]) =>
    weeks.filter(({ sheets }) => sheets.every(({ day }) => day < '2026-11'));
  expect(codesOf(before(older))).toEqual(codesOf(before(younger)));
  expect(codesOf(older)).not.toEqual(codesOf(younger));
});

test('what was recorded says how hard the year is', () => {
  const logitsAfter = (ability: number) => {
    const known = afterDays(planner, newKnown(), 4, () => ability);
    const weeks = yearOf(known, { from: dayAfter(4), weeks: 2 });
    return mean(weeks.flatMap(({ sheets }) => sheets.map(({ planned }) => planned.facts.logits)));
  };
  expect(logitsAfter(1)).toBeGreaterThan(logitsAfter(-2) + 1);
});

test('a child that is said to be at a step has sheets about that step, harder for a higher one', () => {
  const steps = [1, 3, 5];
  const abilities = steps.map((step) => abilityForStep(planner, print, step));
  expect(abilities).toEqual([...abilities].sort((one, other) => one - other));
  const means = abilities.map((ability) => {
    const weeks = yearOf(newKnown({ deeds: ['cut'] }), { ability, weeks: 6 });
    return mean(weeks.flatMap(({ sheets }) => sheets.map(({ planned }) => planned.facts.step)));
  });
  for (const [at, step] of steps.entries()) {
    expect(Math.abs((means[at] ?? 0) - step), `step ${step}`).toBeLessThan(1.5);
  }
});

test.each([1, 4, 7, 10])('%i sheets a week lie on as few days as hold two each', (sheets) => {
  const [week] = yearOf(newKnown(), { weeks: 1, sheets });
  const days = week?.sheets.map(({ day }) => day) ?? [];
  expect(days).toHaveLength(sheets);
  expect(new Set(days).size).toBe(Math.ceil(sheets / 2));
});
