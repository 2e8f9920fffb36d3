// Names as they are printed keep to their line, whatever a person types.
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { pathBounds } from '../../src/base/index.ts';
import { printableName, wordsPath } from '../../src/page/index.ts';
import { loadAllScripts, WORDS } from '../outside/script-fonts.ts';
import { testSeed } from '../seed.ts';

const seed = testSeed('names in place');
/** At the foot of a sheet, in ems of a name: up to the letters of the line above, down to the end of the code. */
const ROOM = { up: 1.4, down: 0.6 };
/** Above, below, over one another, round a letter, of several scripts. */
const MARKS = [
  '\u0301',
  '\u0302',
  '\u0323',
  '\u0324',
  '\u20dd',
  '\u064e',
  '\u0651',
  '\u093c',
  '\u0941',
];
const LETTERS = ['o', 'Q', 'Щ', 'Ω', 'م', 'ל', 'क'];

beforeAll(loadAllScripts);

function reachOf(name: string) {
  const path = wordsPath(printableName(name), 'regular');
  if (path.length === 0) return { up: 0, down: 0 };
  const { top, bottom } = pathBounds(path);
  return { up: -top, down: bottom };
}

describe('a printed name', () => {
  test('keeps every mark of names as they are written', () => {
    const names = Object.values(WORDS).flat();
    for (const name of [...names, 'Nguye\u0302\u0303n', 'لَّٰ', 'שִּׁ'])
      expect(printableName(name), name).toBe(name.normalize('NFC'));
  });

  test('keeps to its line, whatever marks are heaped on its letters', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...LETTERS),
        fc.array(fc.constantFrom(...MARKS), { maxLength: 60 }),
        (letter, marks) => {
          const { up, down } = reachOf(letter + marks.join(''));
          expect(up).toBeLessThan(ROOM.up);
          expect(down).toBeLessThan(ROOM.down);
        },
      ),
      { seed },
    );
    expect(printableName(`o${'\u0301'.repeat(60)}`)).not.toBe('');
  });
});
