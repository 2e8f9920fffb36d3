// What is said of a child's growth, and what is not.
import { describe, expect, test } from 'vitest';
import { SKILLS } from '../activities/index.ts';
import { randomFrom } from '../base/index.ts';
import { mondayOf } from './days.ts';
import { growthOf } from './growth.ts';
import { afterDays, dayAfter, newKnown, START, WISHES, withResults } from './known-to-test.ts';
import { newPlanner } from './planner.ts';

const planner = newPlanner();
const DAYS = 36;
const able = afterDays(planner, newKnown(), DAYS, (day) => -1.5 + 0.1 * day);
const growth = growthOf(planner, able, dayAfter(DAYS), WISHES);

describe('growth', () => {
  test('of a child without records says nothing of any skill', () => {
    const none = growthOf(planner, newKnown(), START, WISHES);
    expect(none).toMatchObject({ sheets: 0, days: 0, pairs: [], watch: [] });
    expect(none.skills.map(({ skill, course, trend }) => [skill, course.length, trend])).toEqual(
      SKILLS.map((skill) => [skill, 0, 'unknown']),
    );
  });

  test('has one point for each day, the last of them today, each within its interval', () => {
    for (const { course } of growth.skills) {
      const days = course.map(({ day }) => day);
      expect(new Set(days).size).toBe(days.length);
      expect([...days].sort()).toEqual(days);
      expect(days.at(-1)).toBe(dayAfter(DAYS));
      for (const { mean, least, most } of course) {
        expect(least).toBeLessThan(mean);
        expect(most).toBeGreaterThan(mean);
      }
    }
  });

  test('of a child that grows by three and a half logits in ten weeks rises, and falls nowhere', () => {
    expect(growth.trend).toBe('rising');
    expect(growth.skills.map(({ trend }) => trend)).not.toContain('falling');
    expect(growth.watch).toEqual([]);
  });

  test('of a child that comes to do much less than before is worth a look', () => {
    const fallen = afterDays(planner, newKnown({}, 'b'), DAYS, (day) => (day < 8 ? 2 : -2.5));
    expect(growthOf(planner, fallen, dayAfter(DAYS), WISHES).watch).toContain('falling');
  });

  test('names steps that lie on the ladders of the activities given', () => {
    for (const { fitting } of growth.skills) {
      expect(fitting.length).toBeGreaterThan(0);
      for (const { step, steps, least, most } of fitting) {
        const rising = [1, least, step, most, steps];
        expect(rising).toEqual([...rising].sort((one, other) => one - other));
      }
    }
  });

  test('tells a narrower range of steps the more is recorded', () => {
    const few = growthOf(
      planner,
      afterDays(planner, newKnown(), 2, () => 0),
      dayAfter(2),
      WISHES,
    );
    const many = growthOf(
      planner,
      afterDays(planner, newKnown(), 20, () => 0),
      dayAfter(20),
      WISHES,
    );
    const widths = (of: typeof growth) =>
      of.skills.flatMap(({ course }) => course.slice(-1).map(({ least, most }) => most - least));
    expect(Math.max(...widths(many))).toBeLessThan(Math.max(...widths(few)));
  });

  test('is drawn inside its square, from the first day on record to today, with rising guides', () => {
    const charts = growth.skills.flatMap(({ chart }) => chart ?? []);
    expect(charts).toHaveLength(SKILLS.length);
    for (const { from, to, points, guides, weeks } of charts) {
      expect([from, to]).toEqual([growth.from, dayAfter(DAYS)]);
      expect(points.at(-1)?.across).toBe(1);
      const places = points.flatMap(({ across, least, mean, most }) => [across, least, mean, most]);
      for (const place of [...places, ...guides.map(({ up }) => up)]) {
        expect(place).toBeGreaterThanOrEqual(0);
        expect(place).toBeLessThanOrEqual(1);
      }
      for (const [index, { step, up }] of guides.entries()) {
        expect(step).toBeGreaterThan(guides[index - 1]?.step ?? 0);
        expect(up).toBeGreaterThan(guides[index - 1]?.up ?? 0);
      }
      const mondays = weeks.map(({ day }) => mondayOf(day));
      expect(new Set(mondays).size).toBe(mondays.length);
    }
  });

  test('ends its weeks with the step that is said to fit now', () => {
    for (const { chart, fitting } of growth.skills) {
      const now = fitting.find(({ activity }) => activity === chart?.activity);
      const { step, least, most, steps } = chart?.weeks.at(-1) ?? {};
      expect({ activity: chart?.activity, step, least, most, steps }).toEqual(now);
    }
  });

  test('of a single day is not drawn', () => {
    const one = afterDays(planner, newKnown(), 1, () => 0);
    const { skills, sheets } = growthOf(planner, one, START, WISHES);
    expect(sheets).toBeGreaterThan(0);
    expect(skills.map(({ chart }) => chart)).toEqual(skills.map(() => undefined));
  });

  test('leaves out what this version cannot read, and counts it', () => {
    const [first] = able.results;
    if (!first) throw new Error('no results');
    const strange = { ...first, id: 'strange', code: 'ZZZZ-ZZZZ' };
    const other = growthOf(planner, withResults(able, [strange]), dayAfter(DAYS), WISHES);
    expect(other.unread).toBe(1);
    expect(other.sheets).toBe(growth.sheets);
  });

  test('says falling of hardly any child whose ability stays as it is', () => {
    const random = randomFrom(11);
    const fallen = Array.from({ length: 20 }, (_, child) => {
      const known = afterDays(planner, newKnown({}, `s${child}`), 12, () => 0, random.fork());
      return growthOf(planner, known, dayAfter(12), WISHES).watch.includes('falling');
    });
    expect(fallen.filter(Boolean).length).toBeLessThanOrEqual(1);
  });
});
