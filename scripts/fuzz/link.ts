// Links that hold a recipe: read, and what would lie on the table made and drawn.
import fc from 'fast-check';
import { ACTIVITY_IDS } from '../../src/activities/index.ts';
import { fileName } from '../../src/web/actions/file-name.ts';
import { show } from '../../src/web/making/show.ts';
import { placeOf } from '../../src/web/place-names.ts';
import { readAddress, writeAddress } from '../../src/web/recipe/address.ts';
import { type Entries, FIRST_ENTRIES } from '../../src/web/recipe/entries.ts';
import { knownNumbers, someSheets } from './bases.ts';
import { hostileText } from './hostile.ts';
import type { Kind } from './kind.ts';
import { acceptedOrTold, isOneFileName } from './must-hold.ts';

const NAMES =
  'activity step tasks sheets seed first paper orientation print colours pictures onlyOwn toCut hand size ink margin letters ownLetters made quick atHand changed goals with.content with.boxes with.items with.__proto__ with.constructor __proto__ with.'.split(
    ' ',
  );
const WORDS =
  'true false yes no 0 1 2 3 12 500 501 -1 1.5 1e3 1e999 NaN Infinity 0x10 9007199254740993 A4 A5 Letter landscape grey left large saving pocket red,blue pieces,cards by-hand half-made shapes letters pictures'.split(
    ' ',
  );

export function linkKind(): Kind<string> {
  const own = knownNumbers();
  const codes = someSheets().map(({ code }) => code);
  const plain: readonly Entries[] = ACTIVITY_IDS.map((activity) => ({
    ...FIRST_ENTRIES,
    activity,
    seed: 3,
    sheets: 2,
  }));
  const full: Entries = {
    ...FIRST_ENTRIES,
    seed: 3,
    sheets: 3,
    tasks: 2,
    colours: ['red', 'blue', 'green'],
    pictures: own,
    changed: [`2:${codes[0] ?? ''}`],
    hand: 'left',
    letters: 'NERW',
  };
  const value = fc.oneof(
    fc.constantFrom(...WORDS, ...ACTIVITY_IDS, ...own, ...codes.map((code) => `1:${code}`)),
    hostileText,
    fc.integer().map(String),
  );
  const pairs = fc.array(fc.tuple(fc.oneof(fc.constantFrom(...NAMES), hostileText), value), {
    maxLength: 5,
  });
  const changed = fc
    .tuple(fc.constantFrom(...plain, full), pairs, fc.boolean())
    .map(([entries, all, isAfter]) => {
      const query = new URLSearchParams(writeAddress(entries));
      for (const [name, text] of all) {
        if (isAfter) query.append(name, text);
        else query.set(name, text);
      }
      return `#${query.toString()}`;
    });
  return {
    name: 'link',
    inputs: fc.oneof(
      { weight: 8, arbitrary: changed },
      { weight: 1, arbitrary: hostileText.map((text) => `#${text}`) },
      { weight: 1, arbitrary: changed.map((link) => link.replaceAll('%', '%%').slice(0, 200)) },
    ),
    meet: (hash) => {
      placeOf(hash, ['today', 'make', 'record'], false);
      const entries = readAddress(hash, 1);
      isOneFileName(fileName({ entries, count: entries.sheets } as never, 'pdf'));
      acceptedOrTold(show({ entries }, 'sheet', { wanted: 1, leaf: 1 }));
    },
    show: (hash) => hash,
  };
}
