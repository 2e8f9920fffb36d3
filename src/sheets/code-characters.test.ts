// What the characters of a sheet code promise: no look-alikes, and no single slip goes unnoticed.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  CODE_ALPHABET,
  CODE_BASE,
  checkDigitOf,
  digitsOf,
  groupedText,
  isChecked,
  LONGEST_CODE,
} from './code-characters.ts';

const digits = (length: { min: number; max: number }) =>
  fc.array(fc.integer({ min: 0, max: CODE_BASE - 1 }), {
    minLength: length.min,
    maxLength: length.max,
  });
const changed = (digits: readonly number[], place: number, value: number) =>
  digits.map((digit, index) => (index === place ? value : digit));
const checked = (data: readonly number[]) => [...data, checkDigitOf(data)];
const SAMPLES = [
  [0],
  [22, 22],
  [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13],
  Array.from({ length: 31 }, (_, index) => (index * 7) % CODE_BASE),
  Array.from({ length: 31 }, () => 0),
];

describe('the alphabet', () => {
  it('has 23 different characters, a prime, and none that is taken for another', () => {
    expect(new Set(CODE_ALPHABET).size).toBe(23);
    for (const lookAlike of 'O0QI1L5S8BGVZ') expect(CODE_ALPHABET).not.toContain(lookAlike);
  });
});

describe('the check character', () => {
  it('makes every code valid', () => {
    fc.assert(fc.property(digits({ min: 1, max: 36 }), (data) => isChecked(checked(data))));
  });

  it('catches every single wrong character, tried one by one', () => {
    for (const code of SAMPLES.map(checked)) {
      for (const [place, right] of code.entries()) {
        for (let wrong = 0; wrong < CODE_BASE; wrong++) {
          if (wrong !== right) expect(isChecked(changed(code, place, wrong))).toBe(false);
        }
      }
    }
  });

  it('catches every swap of neighbours that changes the code, tried one by one', () => {
    for (const code of SAMPLES.map(checked)) {
      for (let place = 1; place < code.length; place++) {
        const [one, other] = [code[place - 1] ?? 0, code[place] ?? 0];
        const swapped = changed(changed(code, place - 1, other), place, one);
        if (one !== other) expect(isChecked(swapped)).toBe(false);
      }
    }
  });

  it('catches any single wrong character and any swap in any code', () => {
    const slip = fc.tuple(digits({ min: 2, max: 36 }), fc.nat(), fc.integer({ min: 1, max: 22 }));
    fc.assert(
      fc.property(slip, ([data, anywhere, shift]) => {
        const code = checked(data);
        const place = anywhere % code.length;
        const wrong = changed(code, place, ((code[place] ?? 0) + shift) % CODE_BASE);
        const next = (place + 1) % code.length;
        const swapped = changed(changed(code, place, code[next] ?? 0), next, code[place] ?? 0);
        const isSwap = next > place && code[place] !== code[next];
        return !isChecked(wrong) && !(isSwap && isChecked(swapped));
      }),
    );
  });

  it('depends on the length: zeros added in front are noticed', () => {
    const code = checked([3, 1, 4, 1, 5]);
    expect(isChecked([0, ...code])).toBe(false);
    expect(isChecked([0, 0, ...code])).toBe(false);
  });
});

describe('a typed code', () => {
  it('is read in any case, with or without hyphens and spaces', () => {
    fc.assert(
      fc.property(digits({ min: 1, max: 36 }), (data) => {
        const text = groupedText(data);
        const spellings = [
          text,
          text.toLowerCase(),
          text.replaceAll('-', ''),
          ` ${text} `.replaceAll('-', ' – '),
        ];
        for (const spelling of spellings)
          expect(digitsOf(spelling)).toEqual({ ok: true, value: data });
      }),
    );
  });

  it('is printed in groups of four', () => {
    expect(groupedText([0, 1, 2, 3, 4, 5, 6, 7, 8])).toBe('2346-79AC-D');
  });

  it.each([...'O0QI1L5S8BGVZ', ...'o0qi1l5s8bgvz', 'ß', 'é', '/', '٣', '😀'])(
    'with %s is refused, naming the character and its place',
    (character) => {
      const read = digitsOf(`2346-7${character}AC`);
      expect(read).toMatchObject({
        ok: false,
        refusals: [{ code: 'unreadable', at: 'sheet code › character 6', got: character }],
      });
    },
  );

  it('that is empty, or far too long, is refused', () => {
    expect(digitsOf(' - ')).toMatchObject({ ok: false, refusals: [{ code: 'missing' }] });
    expect(digitsOf('2'.repeat(LONGEST_CODE + 1))).toMatchObject({
      ok: false,
      refusals: [{ code: 'too-big' }],
    });
  });
});
