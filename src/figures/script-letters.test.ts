// Letters of other scripts: the alphabets whole, their outlines the font's, their look-alikes apart.
import { readFileSync } from 'node:fs';
import { create } from 'fontkit';
import { describe, expect, it } from 'vitest';
import { pathBounds } from '../base/index.ts';
import { figureSchema } from './figure-schema.ts';
import { FORMS, type FormId, SCRIPT_LETTERS, SCRIPT_NUMERALS } from './form-names.ts';
import { areLookAlikes } from './likeness.ts';
import { figureName } from './names.ts';
import { outlineOf } from './outline.ts';
import { SCRIPTS, type ScriptPool } from './script-letters.ts';

const POOLS = Object.keys(SCRIPTS) as ScriptPool[];
const formFor = (character: string): FormId => `letter-${character}`;

describe('a pool of letters', () => {
  // Unicode 15 code charts: the basic Russian and Greek alphabets, the consonants ka to ha and the independent
  // vowels of Hindi without the vocalic r, the 28 letters of Arabic.
  it.each([
    ['cyrillic-capitals', 33, 'А', 'Я'],
    ['cyrillic-small', 33, 'а', 'я'],
    ['greek-capitals', 24, 'Α', 'Ω'],
    ['greek-small', 24, 'α', 'ω'],
    ['devanagari-letters', 43, 'अ', 'ह'],
    ['arabic-letters', 28, 'ا', 'ي'],
    ['devanagari-varnamala', 44, 'अ', 'ह'],
    // U+0621 to U+063A and U+0641 to U+064A.
    ['arabic-letters-with-hamza', 36, 'ء', 'ي'],
  ] as const)('%s holds %i different letters from first to last', (pool, count, first, last) => {
    const characters = [...SCRIPTS[pool]];
    expect(new Set(characters).size).toBe(count);
    expect(characters[0]).toBe(first);
    expect(characters.at(-1)).toBe(last);
    expect(SCRIPT_LETTERS[pool]).toEqual(characters.map(formFor));
  });

  it('holds capitals whose small letters are the small pool', () => {
    expect(SCRIPTS['cyrillic-capitals'].toLowerCase()).toBe(SCRIPTS['cyrillic-small']);
    expect([...SCRIPTS['greek-capitals']].map((letter) => letter.toLowerCase()).join('')).toBe(
      SCRIPTS['greek-small'],
    );
  });

  // Unicode 15 code charts: U+0966 to U+096F and U+0660 to U+0669 have the decimal values 0 to 9.
  it.each([
    ['devanagari-numerals', 0x966, 0],
    ['arabic-indic-numerals', 0x660, 1],
  ] as const)('%s holds the digits in order, but no nought that is a dot', (pool, zero, first) => {
    const digits = Array.from({ length: 10 }, (_, digit) => String.fromCodePoint(zero + digit));
    const forms = digits.slice(first).map((digit) => `numeral-${digit}`);
    expect(SCRIPT_NUMERALS[pool]).toEqual(forms);
    expect(figureName({ form: `numeral-${digits[7]}` })).toMatch(/ numeral 7$/);
  });

  it('holds letters that a file may name, and no others', () => {
    for (const pool of POOLS) {
      for (const form of SCRIPT_LETTERS[pool]) {
        expect(FORMS).toContain(form);
        expect(figureSchema.parse({ form })).toEqual({ form });
      }
    }
    for (const other of ['letter-', 'letter-A', 'letter-ς', 'letter-ЖЖ', 'letter-漢']) {
      expect(figureSchema.safeParse({ form: other }).success, other).toBe(false);
    }
  });
});

describe('the outline of a letter', () => {
  it('has the proportions that the font gives it', () => {
    const font = create(
      readFileSync(new URL('../../assets/fonts/Andika-Bold.ttf', import.meta.url)),
    );
    for (const form of [
      ...SCRIPT_LETTERS['cyrillic-capitals'],
      ...SCRIPT_LETTERS['cyrillic-small'],
    ]) {
      const { left, right, top, bottom } = pathBounds(outlineOf({ form }).path);
      const codePoint = form.codePointAt('letter-'.length) ?? 0;
      const { minX, maxX, minY, maxY } = font.glyphForCodePoint(codePoint).bbox;
      expect((right - left) / (bottom - top), form).toBeCloseTo((maxX - minX) / (maxY - minY), 1);
    }
  });

  it('is at least a third of the cell across one way, and level in the middle', () => {
    for (const form of POOLS.flatMap((pool) => SCRIPT_LETTERS[pool])) {
      const { left, right, top, bottom } = pathBounds(outlineOf({ form }).path);
      expect(Math.max(right - left, bottom - top), form).toBeGreaterThan(0.33);
      expect(Math.abs(left + right), form).toBeLessThan(0.05);
    }
  });
});

describe('look-alikes of other scripts', () => {
  // From memory: what differs in a mark or a stroke, or is the other one in a mirror.
  it.each([
    ['capital-Ñ', 'capital-N'],
    ['small-ñ', 'small-n'],
    ['small-ñ', 'small-h'],
    ['letter-أ', 'letter-ا'],
    ['letter-ة', 'letter-ه'],
    ['letter-ى', 'letter-ي'],
    ['letter-ؤ', 'letter-و'],
    ['numeral-٧', 'numeral-٨'],
    ['numeral-٢', 'numeral-٣'],
    ['numeral-१', 'numeral-९'],
    ['numeral-३', 'numeral-६'],
  ] as const)('%s and %s never stand together', (one, other) => {
    expect(areLookAlikes(one, other)).toBe(true);
  });

  // Common practice: letters that differ in dots, a tail or a stroke.
  it.each([
    ...'بت تث جح حخ دذ رز سش صض طظ عغ فق ИЙ ЕЁ ШЩ ЗЭ ЬЪ ий ёе ΛΔ ΟΘ αο νυ घध थय भम बव पष इई ओऔ'.split(
      ' ',
    ),
  ])('%s never stand together', (pair) => {
    const [one = '', other = ''] = [...pair];
    expect(areLookAlikes(formFor(one), formFor(other))).toBe(true);
    expect(areLookAlikes(formFor(other), formFor(one))).toBe(true);
  });

  it.each([...'АЖ ФШ ДО жю ΨΔ λω कइ मट بو سل حط'.split(' ')])('%s may', (pair) => {
    const [one = '', other = ''] = [...pair];
    expect(areLookAlikes(formFor(one), formFor(other))).toBe(false);
  });

  it('are found between scripts: a Cyrillic and a Greek A are the Latin one', () => {
    expect(areLookAlikes('letter-А', 'capital-A')).toBe(true);
    expect(areLookAlikes('letter-А', 'letter-Α')).toBe(true);
  });
});

describe('the name of a letter', () => {
  it('is in Latin letters, its script before it', () => {
    expect(figureName({ form: 'letter-Ж', colour: 'red' })).toBe('red Cyrillic capital zhe');
    expect(figureName({ form: 'letter-ω' })).toBe('Greek small omega');
    expect(figureName({ form: 'letter-ह' })).toBe('Devanagari letter ha');
    expect(figureName({ form: 'letter-ي' })).toBe('Arabic letter yeh');
  });
});
