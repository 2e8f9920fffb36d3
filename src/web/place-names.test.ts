// Where an address leads: to the place that it names if that is there, else to Make.
import { expect, test } from 'vitest';
import { PLACE_NAMES, placeOf } from './place-names.ts';

test('a place is found by its name', () => {
  expect(PLACE_NAMES.map((place) => placeOf(`#${place}`, PLACE_NAMES, false))).toEqual([
    ...PLACE_NAMES,
  ]);
});

test('what a place is asked for does not change which place it is', () => {
  expect(placeOf('#record?code=3CFR-YRT7-FF2W-DU', PLACE_NAMES, false)).toBe('record');
  expect(placeOf('#records?code=3CFR-YRT7-FF2W-DU', PLACE_NAMES, false)).toBe('make');
});

test.each(['#seed=7&step=2', '#make', '#nonsense', '#growth'])('%s is Make', (hash) => {
  expect(placeOf(hash, ['today', 'make', 'record'], true)).toBe('make');
});

test.each(['', '#'])(
  'an address without anything (“%s”) is Today once a child is known',
  (hash) => {
    expect(placeOf(hash, PLACE_NAMES, true)).toBe('today');
    expect(placeOf(hash, PLACE_NAMES, false)).toBe('make');
    expect(placeOf(hash, ['make', 'record'], true)).toBe('make');
  },
);
