// What of any words reaches the paper: nothing that the font lacks, and a line to write on where a letter would be lost.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import { GLYPHS } from '../figures/index.ts';
import { printable, printableName, WRITE_IN } from './printable.ts';

const seed = testSeed('printable words');

describe('printable words', () => {
  test.each([
    ['Fern', 'Fern', true],
    ['Zoe\u0308 & Noe\u0308l', 'Zoë & Noël', true],
    ['Fern 🌿', 'Fern', true],
    ['Fern🌿', 'Fern', true],
    ['🦊', WRITE_IN, false],
    ['Папороть', WRITE_IN, false],
    ['Fern פפ פפ said', `Fern ${WRITE_IN} said`, false],
    ['one\ntwo', 'one\ntwo', true],
    ['', '', true],
  ])('“%s” is printed as “%s”', (words, printed, isWhole) => {
    expect(printable(words)).toEqual({ words: printed, isWhole });
  });

  test('a name of several lines is printed on one', () => {
    expect(printableName(' Wren\n\tFern ')).toBe('Wren Fern');
  });

  test('whatever the words, the font has every letter of what is printed', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (words) => {
        const characters = [...printable(words).words].filter((each) => each !== '\n');
        expect(characters.filter((each) => !GLYPHS.has(each))).toEqual([]);
      }),
      { seed },
    );
  });
});
