// Words in other scripts without and with their fonts: clear defects without, names printed with them.
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { loadAllScripts, WORDS } from '../../tests/outside/script-fonts.ts';
import { testSeed } from '../../tests/seed.ts';
import { pathBounds } from '../base/index.ts';
import { GLYPHS } from '../figures/index.ts';
import { directionOf } from '../languages/index.ts';
import { clustersOf, isPlain, scriptOf, scriptsIn, scriptsOfLanguage } from './faces.ts';
import { fitText } from './fit-text.ts';
import { printable, printableName, WRITE_IN } from './printable.ts';
import { isSetPlainly, setLine } from './setting.ts';
import { textWidthMm, wordsPath, wrapText } from './type.ts';

const seed = testSeed('faces of other scripts');
const NAMES = ['ليلى', 'אורי', 'आरव', 'Соня', 'Ελένη', 'Nguyễn', 'Zoë ليلى', 'Ɓala', 'مُحَمَّد علي'];

describe('without the fonts', () => {
  test('a name in another script is left for a pen, and words in it are a defect that says why', () => {
    for (const name of NAMES) expect(printableName(name), name).toBe('');
    expect(() => textWidthMm('ليلى', 4)).toThrow(/fonts of arabic before words in it/);
    expect(() => wrapText('आरव', 50, 4)).toThrow(/fonts of devanagari/);
  });

  test('the letters of the table need none, whatever the words', () => {
    const own = fc.string({ unit: fc.constantFrom(...GLYPHS) });
    fc.assert(
      fc.property(own, (words) => {
        expect(scriptsIn(words)).toEqual([]);
        expect(isSetPlainly(words)).toBe(true);
        expect(clustersOf(words)).toEqual([...words]);
      }),
      { seed },
    );
  });
});

test.each([
  ['en', 'ltr', []],
  ['ar', 'rtl', ['arabic']],
  ['he-IL', 'rtl', ['hebrew']],
  ['fa', 'rtl', ['arabic']],
  ['ur-PK', 'rtl', ['arabic']],
  ['hi', 'ltr', ['devanagari']],
] as const)('a page in %s runs %s and needs %s', (language, direction, scripts) => {
  expect(directionOf(language)).toBe(direction);
  expect(scriptsOfLanguage(language)).toEqual(scripts);
});

describe('with the fonts', () => {
  beforeAll(loadAllScripts);

  test.each(NAMES)('the name %s is printed', (name) => {
    expect(printableName(name)).toBe(name.normalize('NFC'));
  });

  test.each([
    ['🦊 ליא', 'ליא'],
    ['لي🌿لى', 'ليلى'],
    ['Соня (4)', 'Соня (4)'],
    ['გიორგი', ''],
    ['Соня 漢', ''],
    ['กมล', ''],
    ['\u2067ليلى\u2069', 'ليلى'],
  ])('of the name %s the paper gets “%s”', (name, printed) => {
    expect(printableName(name)).toBe(printed);
  });

  test.each([
    ['Ze\u0303\u0301\u0302\u0303\u0304o', 'Z\u1ebd\u0301o'],
    ['\u05e9\u05c1\u05b8\u05bc\u0591\u0592\u0593', '\u05e9\u05c1\u05b8\u05bc\u0591'],
    ['Nguy\u1ec5n \u1e6c\u0308', 'Nguy\u1ec5n \u1e6c\u0308'],
  ])('of “%s” no more marks are printed over a letter than stay in their line', (name, printed) => {
    expect(printableName(name).normalize('NFD')).toBe(printed.normalize('NFD'));
  });

  test('whatever the words, there is a glyph for all that is printed, and it can be measured and drawn', () => {
    const letters = Object.values(WORDS).flat().join('');
    const unit = fc.oneof(
      fc.constantFrom(...letters, ...' ab(1)-🦊\u200d'),
      fc.string({ unit: 'grapheme' }),
    );
    fc.assert(
      fc.property(fc.array(unit), (pieces) => {
        const { words } = printable(pieces.join('').replaceAll('\n', ' '));
        for (const cluster of clustersOf(words)) {
          expect(scriptOf(cluster) !== undefined || isPlain(cluster)).toBe(true);
          if (scriptOf(cluster) === undefined) expect(GLYPHS.has(cluster), cluster).toBe(true);
        }
        const width = textWidthMm(words, 4);
        expect(width).toBeGreaterThanOrEqual(0);
        for (const { shaped } of setLine(words, 'regular').runs) {
          for (const { id } of shaped?.glyphs ?? []) expect(id, words).toBeGreaterThan(0);
        }
      }),
      { seed },
    );
  });

  test('two hundred characters are shortened to their place, at a whole letter', () => {
    for (const word of ['ليلى ', 'क्षितिज', 'Соня']) {
      const long = word.repeat(Math.ceil(200 / word.length)).slice(0, 200);
      const short = fitText(printableName(long), 40, 4);
      expect(textWidthMm(short, 4)).toBeLessThanOrEqual(40);
      expect(textWidthMm(short, 4)).toBeGreaterThan(34);
      expect(short.endsWith('…')).toBe(true);
      expect(long.startsWith(short.slice(0, -1))).toBe(true);
      expect(short).not.toContain('\u094d…');
    }
  });

  test('lines of a paragraph stay within their width and lose no letter', () => {
    const words = [...WORDS.arabic, ...WORDS.devanagari, ...WORDS.extended].join(' ');
    for (const widthMm of [8, 25, 60]) {
      const lines = wrapText(words, widthMm, 4);
      for (const line of lines)
        if (clustersOf(line).length > 1) expect(textWidthMm(line, 4)).toBeLessThanOrEqual(widthMm);
      expect(lines.join('').replaceAll(' ', '')).toBe(words.replaceAll(' ', ''));
    }
  });

  test('the ink of a word lies about where its width says', () => {
    for (const word of Object.values(WORDS).flat()) {
      const { left, right } = pathBounds(wordsPath(word, 'bold'));
      const widthEm = textWidthMm(word, 1, 'bold');
      expect(left, word).toBeGreaterThan(-0.25);
      expect(right, word).toBeLessThan(widthEm + 0.35);
    }
  });

  test('a line to write on stands for a word that lacks a letter, the others are printed', () => {
    expect(printable('Соня 漢字 ليلى').words).toBe(`Соня ${WRITE_IN} ليلى`);
  });
});
