// Words in other scripts against HarfBuzz itself (`hb-shape`, Debian package libharfbuzz-bin), the fonts' own tables of
// characters as fontkit reads them, and the examples of Unicode Standard Annex #9.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { create } from 'fontkit';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Direction } from '../../src/languages/index.ts';
import {
  clustersOf,
  faceOf,
  fromTheLeft,
  isSetPlainly,
  SCRIPTS,
  type Script,
  setLine,
  textWidthMm,
  wordsPath,
  wrapText,
} from '../../src/page/index.ts';
import { SCRIPT_FONTS, unpackFont } from '../../src/shaping/index.ts';
import { fontFile, loadAllScripts, WORDS } from './script-fonts.ts';

const folder = mkdtempSync(join(tmpdir(), 'samewise-fonts-'));
const WEIGHTS = ['regular', 'bold'] as const;
const LEFTWARD: readonly Script[] = ['arabic', 'hebrew'];
/** ISO 15924, as the program wants it. */
const TAGS = { extended: '', greek: 'Grek', hebrew: 'Hebr', arabic: 'Arab', devanagari: 'Deva' };

beforeAll(loadAllScripts);
afterAll(() => rmSync(folder, { recursive: true }));

interface Glyph {
  readonly g: number;
  readonly ax: number;
  readonly dx: number;
  readonly dy: number;
}

/** What the reference makes of each word. */
function referenceFor(
  script: Script,
  weight: 'regular' | 'bold',
  words: readonly string[],
  direction: Direction,
): readonly (readonly Glyph[])[] {
  const file = join(folder, `${script}-${weight}.ttf`);
  writeFileSync(file, unpackFont(fontFile(SCRIPT_FONTS[script][weight])));
  const tag = TAGS[script] === '' ? [] : [`--script=${TAGS[script]}`];
  const said = execFileSync(
    'hb-shape',
    [
      file,
      '--output-format=json',
      '--no-glyph-names',
      '--language=und',
      `--direction=${direction}`,
      ...tag,
    ],
    { input: words.map((word) => word.normalize('NFC')).join('\n'), encoding: 'utf8' },
  );
  return said
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as Glyph[]);
}

describe.each(SCRIPTS)('words in %s', (script) => {
  const words = WORDS[script];
  const direction = LEFTWARD.includes(script) ? 'rtl' : 'ltr';

  test.each(WEIGHTS)('are shaped as the reference shapes them, %s', (weight) => {
    const { unitsPerEm } = create(fontFile(SCRIPT_FONTS[script][weight]));
    const reference = referenceFor(script, weight, words, direction);
    expect(reference).toHaveLength(words.length);
    words.forEach((word, index) => {
      const { glyphs } = faceOf(script, weight).layout(word.normalize('NFC'), direction);
      let at = 0;
      const expected = (reference[index] ?? []).map(({ g, ax, dx, dy }) => {
        const glyph = { g, x: at + dx, y: dy, ax };
        at += ax;
        return glyph;
      });
      const units = (em: number) => Math.round(em * unitsPerEm);
      const got = glyphs.map(({ id, xEm, yEm, advanceEm }) => ({
        g: id,
        x: units(xEm),
        y: units(yEm),
        ax: units(advanceEm),
      }));
      expect(got, word).toEqual(expected);
      expect(
        got.every(({ g }) => g > 0),
        `${word} lacks a glyph`,
      ).toBe(true);
    });
  });

  test.each(WEIGHTS)('have every character in the table of the font, %s', (weight) => {
    const font = create(fontFile(SCRIPT_FONTS[script][weight]));
    const characters = [...words.join('').normalize('NFC')];
    const missing = characters.filter(
      (each) => !font.hasGlyphForCodePoint(each.codePointAt(0) ?? 0),
    );
    expect(missing.filter((each) => !/[\u200c\u200d]/.test(each))).toEqual([]);
    // The face must not claim what the font lacks.
    expect(faceOf(script, weight).has('漢')).toBe(false);
  });

  test('are measured as wide as they are set, and broken between letters with all that joins them', () => {
    for (const word of words) {
      expect(isSetPlainly(word), word).toBe(false);
      const widthEm = setLine(word, 'regular').widthEm;
      expect(textWidthMm(word, 5)).toBeCloseTo(5 * widthEm, 9);
      expect(wordsPath(word, 'regular').length).toBeGreaterThan(0);
      const parts = wrapText(word, 0.1, 4);
      expect(parts).toEqual(clustersOf(word));
      for (const part of parts) expect(part, word).not.toMatch(/^[\p{M}\u200c\u200d]/u);
    }
  });
});

test('more than forty words are compared in Hindi and Arabic alone', () => {
  expect(WORDS.arabic.length + WORDS.devanagari.length).toBeGreaterThanOrEqual(40);
});

test('conjuncts, and lam with alef, are never parted', () => {
  expect(clustersOf('क्षितिज')).toEqual(['क्षि', 'ति', 'ज']);
  expect(clustersOf('स्त्री')).toEqual(['स्त्री']);
  expect(clustersOf('سلام')).toEqual(['س', 'لا', 'م']);
  expect(clustersOf('क् क')).toEqual(['क्', ' ', 'क']);
});

/** The annex writes letters that run to the left as capitals. */
const HEBREW = 'אבגדהוזחטיכלמנסעפצקרשת';
const hebrewOf = (capital: string) => HEBREW.charAt(capital.charCodeAt(0) - 65);
const capitalOf = (letter: string) => String.fromCharCode(65 + HEBREW.indexOf(letter));

/** The line as it stands, from left to right. */
function displayed(words: string, direction: Direction): string {
  const { runs } = setLine(words.replace(/[A-V]/g, hebrewOf), 'regular', direction);
  return [...runs]
    .sort((one, other) => one.xEm - other.xEm)
    .map((run) =>
      run.shaped
        ? run.shaped.glyphs.map(({ cluster }) => run.words.charAt(cluster)).join('')
        : fromTheLeft(run).join(''),
    )
    .join('')
    .replace(/[א-ת]/g, capitalOf);
}

// Unicode Standard Annex #9, 3.4 "Reordering Resolved Levels", rule L2, the four examples; letters beyond V changed to
// others since Hebrew has 22, and quotation marks set straight.
test.each([
  ['car means CAR.', 'ltr', 'car means RAC.'],
  ['\u2067car MEANS CAR.\u2069', 'ltr', '.RAC SNAEM car'],
  [
    'he said "\u2067car MEANS CAR\u2069." "\u2067IT DOES\u2069," she agreed.',
    'ltr',
    'he said "RAC SNAEM car." "SEOD TI," she agreed.',
  ],
  [
    'DID BOU SAB \'\u2066he said "\u2067car MEANS CAR\u2069"\u2069\'?',
    'rtl',
    '?\'he said "RAC SNAEM car"\' BAS UOB DID',
  ],
  // Rule L4 and the worked use of numbers and brackets, checked by the rules N0, W2 and L4 by hand.
  ['ABC (DEF) 12', 'rtl', '12 (FED) CBA'],
] as const)('%s in a paragraph %s stands as the annex says', (words, direction, display) => {
  expect(displayed(words, direction)).toBe(display);
});
