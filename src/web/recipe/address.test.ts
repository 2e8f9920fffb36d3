// The address keeps the recipe, and survives what people do to addresses.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readAddress, writeAddress } from './address.ts';
import type { Entries } from './entries.ts';

const entries: fc.Arbitrary<Entries> = fc.record(
  {
    activity: fc.constantFrom('in-every-box', 'by-key', 'copy-pattern'),
    step: fc.integer({ min: 1, max: 20 }),
    changes: fc.dictionary(
      fc.stringMatching(/^[a-z][A-Za-z]{0,12}$/),
      fc.oneof(fc.integer({ min: -9, max: 99 }), fc.boolean(), fc.stringMatching(/^[a-z-]{1,9}$/)),
    ),
    tasks: fc.integer({ min: 1, max: 12 }),
    sheets: fc.integer({ min: 1, max: 5000 }),
    seed: fc.integer({ min: 0, max: 0xffffffff }),
    first: fc.integer({ min: 0, max: 0xffffffff }),
    paper: fc.constantFrom('A4', 'Letter'),
    orientation: fc.constantFrom('portrait', 'landscape'),
    print: fc.constantFrom('colour', 'grey'),
    colours: fc.subarray(['red', 'blue', 'green'], { minLength: 1 }),
    hand: fc.constant('left'),
    size: fc.constant('large'),
    ink: fc.constant('saving'),
    margin: fc.constant('pocket'),
    atHand: fc.constant(true),
    goals: fc.subarray(['head-start', 'eyfs', 'ncf-fs'], { minLength: 1 }),
  },
  {
    requiredKeys: [
      'activity',
      'step',
      'changes',
      'sheets',
      'seed',
      'paper',
      'orientation',
      'print',
    ],
  },
);

test('what is written is read again', () => {
  fc.assert(
    fc.property(entries, (wanted) => {
      const read = readAddress(`#${writeAddress(wanted)}`, 0);
      expect({ ...read, changes: { ...read.changes } }).toEqual({
        ...wanted,
        changes: { ...wanted.changes },
      });
    }),
  );
});

test('an empty address is a first visit with the seed that is offered', () => {
  expect(readAddress('', 42)).toMatchObject({ activity: 'in-every-box', step: 1, seed: 42 });
});

test('any text at all is read without a fault', () => {
  fc.assert(
    fc.property(fc.string(), (text) => {
      expect(readAddress(`#${text}`, 1).changes).toBeTypeOf('object');
    }),
  );
});
