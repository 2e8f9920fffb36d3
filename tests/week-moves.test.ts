// What a change does to the days of a plan: no sheet is lost or doubled, and what is over or done stays.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { SheetCard } from '../src/web/planning/cards.ts';
import { openOf } from '../src/web/planning/planned.ts';
import {
  type Change,
  changed,
  daysChanged,
  draftsOf,
  type PlannedDay,
  placeBeside,
  twiceInRow,
} from '../src/web/week/moves.ts';
import { testSeed } from './seed.ts';

const seed = testSeed('moves');
const DAYS = ['2026-03-09', '2026-03-10', '2026-03-11', '2026-03-12'] as const;
const TODAY = DAYS[1];
const [PAST, , TOMORROW] = DAYS;

function card(code: string, activity = code, isDone = false): SheetCard {
  return {
    code,
    activity,
    name: activity,
    skill: 'rules',
    step: 1,
    steps: 2,
    content: 'colours',
    tasks: 3,
    why: 'fits',
    minutes: 3,
    materials: { stickers: [], crayons: [], tools: [], papers: [] },
    isDone,
  };
}

function planned(...codes: readonly (readonly string[])[]): readonly PlannedDay[] {
  return DAYS.map((day, place) => ({
    day,
    sheets: (codes[place] ?? []).map((code) => card(code, code, code.endsWith('!'))),
  }));
}

const codesOf = (days: readonly PlannedDay[]) =>
  days.map(({ sheets }) => sheets.map(({ code }) => code));

const plans = fc
  .uniqueArray(fc.tuple(fc.nat(99), fc.boolean(), fc.nat(3)), { selector: ([code]) => code })
  .map((sheets) =>
    planned(
      ...DAYS.map((_, place) =>
        sheets
          .filter(([, , on]) => on === place)
          .map(([code, isDone]) => `${code}${isDone ? '!' : ''}`),
      ),
    ),
  );

test('a sheet that is moved is on its new day once, and every other one where it was', () => {
  fc.assert(
    fc.property(plans, fc.nat(), fc.constantFrom(TODAY, TOMORROW), fc.nat(5), (days, n, to, at) => {
      const all = days.flatMap((day) => openOf(day).map(({ code }) => ({ code, from: day.day })));
      const one = all[n % Math.max(1, all.length)];
      fc.pre(one !== undefined);
      const after = changed(days, { kind: 'move', ...one, to, place: at }, TODAY);
      const others = (some: readonly PlannedDay[]) =>
        some.map(({ day, sheets }) => [
          day,
          sheets
            .map(({ code }) => code)
            .filter((code) => code !== one.code)
            .sort(),
        ]);
      expect(others(after)).toEqual(others(days));
      const ons = after.filter(({ sheets }) => sheets.some(({ code }) => code === one.code));
      const stays = one.from < TODAY ? [one.from] : [];
      expect(ons.map(({ day }) => day)).toEqual([...stays, to]);
    }),
    { seed },
  );
});

test('what is done comes before what one moves among the others of a day', () => {
  const days = planned([], ['a!', 'b', 'c'], ['d']);
  const move: Change = { kind: 'move', code: 'd', from: TOMORROW, to: TODAY, place: 0 };
  expect(codesOf(changed(days, move, TODAY))[1]).toEqual(['a!', 'd', 'b', 'c']);
});

test('a sheet missed on a day that is over stays there, and is on its new day because of that', () => {
  const after = changed(
    planned(['a'], ['b']),
    { kind: 'move', code: 'a', from: PAST, to: TODAY },
    TODAY,
  );
  expect(codesOf(after).slice(0, 2)).toEqual([['a'], ['b', 'a']]);
  expect(after[1]?.sheets[1]?.why).toBe('moved-on');
});

test('only days that are not as they were are kept', () => {
  const days = planned(['a'], ['b', 'c'], ['d']);
  const nowhere: Change = { kind: 'move', code: 'b', from: TODAY, to: TODAY, place: 0 };
  expect(daysChanged(days, changed(days, nowhere, TODAY))).toEqual([]);
  const out = daysChanged(days, changed(days, { kind: 'take-out', code: 'b', from: TODAY }, TODAY));
  expect(draftsOf('a-child', out)).toEqual([
    { kind: 'plan', child: 'a-child', day: TODAY, sheets: [{ code: 'c', why: 'fits' }] },
  ]);
});

test('dropped before or after another, a sheet lies there also where it came from the same day', () => {
  const [, day = { day: TODAY, sheets: [] }] = planned([], ['a', 'b', 'c']);
  expect(placeBeside(day, 'a', 'c', 'before')).toBe(1);
  expect(placeBeside(day, 'a', 'c', 'after')).toBe(2);
  expect(placeBeside(day, 'other', 'a', 'before')).toBe(0);
  expect(placeBeside(day, 'a', 'a', 'before')).toBe(undefined);
});

test('the same activity in a row is found over the end of a day, but not where the one before was never given', () => {
  const of = (code: string) => card(code, code.slice(0, 1));
  const days = (past: readonly SheetCard[]): readonly PlannedDay[] => [
    { day: PAST, sheets: past },
    { day: TODAY, sheets: [of('a1'), of('b1')] },
    { day: TOMORROW, sheets: [of('b2'), of('a2')] },
  ];
  expect([...twiceInRow(days([of('a0')]), TODAY)]).toEqual([`${TOMORROW} b2`]);
  const done = card('a0', 'a', true);
  expect([...twiceInRow(days([done]), TODAY)]).toEqual([`${TODAY} a1`, `${TOMORROW} b2`]);
});
