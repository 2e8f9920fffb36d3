// The units against published counts of schemes, primitive words and necklaces.
import { expect, test } from 'vitest';
import { features } from './features.ts';
import { UNITS } from './units.ts';

/** Every word of letters in which each new letter is the next one of the alphabet. */
function schemesOf(length: number): readonly string[] {
  if (length === 0) return [''];
  return schemesOf(length - 1).flatMap((scheme) => {
    const letters = 'ABCDEF'.slice(0, new Set(scheme).size + 1);
    return [...letters].map((letter) => scheme + letter);
  });
}

function isPrimitive(word: string): boolean {
  // A word is a repeat of a shorter one exactly where it stands inside itself written twice.
  return (word + word).indexOf(word, 1) === word.length;
}

function hasBorder(word: string): boolean {
  return Array.from({ length: word.length - 1 }, (_, index) => index + 1).some((length) =>
    word.endsWith(word.slice(0, length)),
  );
}

/** The word begun at another letter, its letters named anew in the order in which they come. */
function begunAt(word: string, start: number): string {
  const turned = word.slice(start) + word.slice(0, start);
  const order = [...new Set(turned)];
  return [...turned].map((letter) => 'ABCDEF'[order.indexOf(letter)]).join('');
}

const SHORT = [2, 3, 4].flatMap(schemesOf).filter(isPrimitive);

test('R9 schemes of a length, and those that are no repeat of a shorter one, are as many as counted elsewhere', () => {
  // Set partitions: OEIS A000110, 1, 2, 5, 15, 52, 203; of length 3 the primitive ones are AAB ABA ABB ABC.
  const lengths = [1, 2, 3, 4, 5, 6];
  expect(lengths.map((length) => schemesOf(length).length)).toEqual([1, 2, 5, 15, 52, 203]);
  expect(lengths.map((length) => schemesOf(length).filter(isPrimitive).length)).toEqual([
    1, 1, 4, 13, 51, 197,
  ]);
  expect(schemesOf(3).filter(isPrimitive)).toEqual(['AAB', 'ABA', 'ABB', 'ABC']);
});

test('R9 the units are all primitive schemes of two to four letters that do not end as they begin', () => {
  expect([...UNITS].sort()).toEqual(SHORT.filter((scheme) => !hasBorder(scheme)).sort());
});

test('R9 every other primitive scheme is one of the units begun elsewhere', () => {
  for (const scheme of SHORT) {
    const begun = Array.from(scheme, (_, start) => begunAt(scheme, start));
    expect(
      begun.some((word) => UNITS.some((unit) => unit === word)),
      scheme,
    ).toBe(true);
  }
});

test('R1 the shortest unit found in words of two letters written twice agrees with counts of words and necklaces', () => {
  const counts = [1, 2, 3, 4, 5, 6].map((length) => primitiveCount(length));
  // Binary primitive words: OEIS A027375.
  expect(counts).toEqual([2, 2, 6, 12, 30, 54]);
  // Binary necklaces: OEIS A000031; each is a primitive word, begun anywhere, as often as it fits.
  const necklaces = counts.map((_, index) =>
    counts.reduce(
      (sum, count, at) => ((index + 1) % (at + 1) === 0 ? sum + count / (at + 1) : sum),
      0,
    ),
  );
  expect(necklaces).toEqual([2, 3, 4, 6, 8, 14]);
});

/** How many words of two colours, written twice, have no shorter unit by the measured `period`. */
function primitiveCount(length: number): number {
  const words = Array.from({ length: 2 ** length }, (_, bits) =>
    Array.from({ length }, (_, place) => Math.floor(bits / 2 ** place) % 2),
  );
  return words.filter((word) => {
    const row = [...word, ...word].map((bit) => ({ colour: bit === 0 ? 'red' : 'blue' }) as const);
    const { period = 0 } = features({ row: [...row, null] });
    return Math.round(Math.exp(period)) === length;
  }).length;
}
