// What was left of a half-written record is there again; what no longer can be read is no obstacle.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { emptyDraft, type ResultDraft } from './result-draft.ts';
import { isMoreNoted, readResultDraft } from './result-draft-left.ts';

const WRITTEN: ResultDraft = {
  outcomes: { 0: 'right', 2: 'not-yet' },
  isAtOnce: false,
  rightTapped: { 1: true },
  tapped: { 2: [{ place: 3, label: 'orange circle' }] },
  instead: { 2: 'square' },
  day: '2026-03-04',
  help: ['pointed'],
  mood: ['glad'],
  minutes: '6',
  note: 'held the pen well',
};

test('a draft comes through text as it was', () => {
  const left: unknown = JSON.parse(JSON.stringify(WRITTEN));
  expect(readResultDraft(left, '2026-03-05')).toEqual(WRITTEN);
});

test('anything else gives an empty draft of the day', () => {
  const empty = emptyDraft('2026-03-05');
  fc.assert(
    fc.property(fc.jsonValue(), (left) => {
      expect(readResultDraft(left, '2026-03-05')).toEqual(empty);
    }),
  );
  const { note: _, ...short } = WRITTEN;
  for (const left of [undefined, short, { ...WRITTEN, mood: ['gloomy'] }]) {
    expect(readResultDraft(left, '2026-03-05')).toEqual(empty);
  }
});

test('nothing more is noted in an empty draft', () => {
  expect(isMoreNoted(emptyDraft('2026-03-05'))).toBe(false);
  expect(isMoreNoted(WRITTEN)).toBe(true);
});
