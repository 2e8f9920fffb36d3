// Widths of words against another reader of the font, and the breaking of lines.
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { create } from 'fontkit';
import { describe, expect, it } from 'vitest';
import { pathBounds } from '../base/index.ts';
import { GLYPHS } from '../figures/index.ts';
import { textWidthMm, wordsPath, wrapText } from './type.ts';

const font = (file: string) =>
  create(readFileSync(new URL(`../../assets/fonts/${file}`, import.meta.url)));
const FONTS = { regular: font('Andika-Regular.ttf'), bold: font('Andika-Bold.ttf') } as const;
const WEIGHTS = ['regular', 'bold'] as const;
const PLAIN = { kern: false, liga: false, calt: false, clig: false };

const ascii = fc.string({ unit: fc.constantFrom(...'abcdefgxyzABCW 0123456789.,-') });

describe('textWidthMm', () => {
  it('agrees with the font set without kerning, to a micrometre', () => {
    const lines = [
      'Which ones are in every box?',
      'Name',
      'Wave — “fit” · 3×4 …',
      'Ärger, façade, œuvre',
    ];
    for (const weight of WEIGHTS) {
      for (const line of lines) {
        const units = FONTS[weight].layout(line, PLAIN).advanceWidth;
        const expected = (units * 3.2) / FONTS[weight].unitsPerEm;
        expect(Math.abs(textWidthMm(line, 3.2, weight) - expected), line).toBeLessThan(0.001);
      }
    }
  });

  it('is the sum of its parts and grows with the em', () => {
    fc.assert(
      fc.property(ascii, ascii, (one, other) => {
        const sum = textWidthMm(one, 4) + textWidthMm(other, 4);
        expect(textWidthMm(one + other, 4)).toBeCloseTo(sum, 9);
        expect(textWidthMm(one, 8)).toBeCloseTo(2 * textWidthMm(one, 4), 9);
      }),
    );
  });

  it('takes a letter and its accent as one character', () => {
    expect(textWidthMm('e\u0301', 4)).toBe(textWidthMm('é', 4));
  });

  it('gives an unknown character a full em, so that nothing runs over', () => {
    expect(textWidthMm('漢', 4)).toBe(4);
  });
});

describe('wrapText', () => {
  it('keeps every line within the width and loses no letter', () => {
    fc.assert(
      fc.property(ascii, fc.integer({ min: 5, max: 60 }), (words, widthMm) => {
        const lines = wrapText(words, widthMm, 4, 'regular');
        for (const line of lines) expect(textWidthMm(line, 4)).toBeLessThanOrEqual(widthMm);
        expect(lines.join('').replaceAll(' ', '')).toBe(words.replaceAll(' ', ''));
      }),
    );
  });

  it('breaks at spaces, as late as fits', () => {
    const width = textWidthMm('one two', 4);
    expect(wrapText('one two six', width, 4)).toEqual(['one two', 'six']);
  });

  it('breaks where the words do, and keeps an empty line', () => {
    expect(wrapText('one\n\ntwo', 100, 4)).toEqual(['one', '', 'two']);
  });

  it('breaks a word that is wider than a line between letters', () => {
    const lines = wrapText('aaaaaa', textWidthMm('aa', 4), 4);
    expect(lines).toEqual(['aa', 'aa', 'aa']);
  });

  it('puts one letter on a line that is narrower than any', () => {
    expect(wrapText('abc', 0.1, 4)).toEqual(['a', 'b', 'c']);
  });
});

describe('wordsPath', () => {
  it('sets letters side by side on the baseline, as wide as textWidthMm says', () => {
    const [one, two] = [pathBounds(wordsPath('H', 'bold')), pathBounds(wordsPath('HH', 'bold'))];
    expect(two.right - one.right).toBeCloseTo(textWidthMm('H', 1, 'bold'), 9);
    expect(one.bottom).toBeCloseTo(0, 9);
  });

  it('has an outline for every character of the table but the spaces', () => {
    const blank = [...GLYPHS].filter((character) => wordsPath(character, 'regular').length === 0);
    expect(blank.every((character) => character.trim() === '' || character === '\u00ad')).toBe(
      true,
    );
  });
});
