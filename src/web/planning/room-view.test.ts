// Whether a group's sheets can be had is told however its names are written, and not tried for very many.
import { expect, test } from 'vitest';
import { type Entries, FIRST_ENTRIES } from '../recipe/entries.ts';
import { roomView } from './room-view.ts';

/** Of so easy a row there are few different ones. */
const RECIPE: Entries = {
  ...FIRST_ENTRIES,
  activity: 'continue-row',
  step: 1,
  changes: { content: 'colours' },
  tasks: 1,
  sheets: 10,
  seed: 3,
};

function isRoomFor(children: number, between: string): boolean {
  const names = Array.from({ length: children }, (_, place) => `Child ${place}`).join(between);
  return roomView({ recipe: RECIPE, group: { names, sortedBy: 'child' } }).ok;
}

test.each(['\n', ', '])(
  'too few equally hard sheets are told, with %j between names',
  (between) => {
    expect(isRoomFor(2, between)).toBe(true);
    expect(isRoomFor(12, between)).toBe(false);
  },
);

test.each(['\n', ', '])('very many sheets are not tried, with %j between names', (between) => {
  expect(isRoomFor(41, between)).toBe(true);
});

test('names that no group can be made of are told of by the table alone', () => {
  expect(isRoomFor(0, '\n')).toBe(true);
});
