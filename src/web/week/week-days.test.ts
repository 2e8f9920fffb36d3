// Which days a week has, and which week can still be planned.
import { expect, test } from 'vitest';
import { codesToPrint } from './paper-order.ts';
import { daysNamed, USUAL_WEEKDAYS, weekToPlan } from './week-days.ts';

test('days are named from Monday on, in their order', () => {
  expect(daysNamed('2026-03-09', ['sunday', 'monday'])).toEqual(['2026-03-09', '2026-03-15']);
});

test('a week is there to plan until its last day, then it is the next one', () => {
  const weeks = ['2026-03-09', '2026-03-13', '2026-03-14', '2026-03-15'].map((today) =>
    weekToPlan(today, USUAL_WEEKDAYS),
  );
  expect(weeks).toEqual(['2026-03-09', '2026-03-09', '2026-03-16', '2026-03-16']);
  expect(weekToPlan('2026-03-14', ['saturday'])).toBe('2026-03-09');
});

test('sheets go onto paper by child or by day, without those of other days', () => {
  const day = (name: string, ...codes: readonly string[]) => ({
    day: name,
    sheets: codes.map((code) => ({ code, isDone: code.endsWith('!') })),
  });
  const weeks = [
    { child: 'fern', days: [day('1', 'f1'), day('2', 'f2!', 'f3'), day('3', 'f4')] },
    { child: 'wren', days: [day('1', 'w1'), day('2', 'w2')] },
  ];
  expect(codesToPrint(weeks, ['1', '2'], 'by-child')).toEqual(['f1', 'f3', 'w1', 'w2']);
  expect(codesToPrint(weeks, ['1', '2'], 'by-day')).toEqual(['f1', 'w1', 'f3', 'w2']);
});
