// The table of letters against the font files, read by another reader.
import { readFileSync } from 'node:fs';
import { create } from 'fontkit';
import { describe, expect, it } from 'vitest';
import { pathBounds } from '../base/index.ts';
import { CAP_HEIGHT_EM, GLYPHS, glyphOf, UNITS_PER_EM } from './glyphs.ts';

const FONTS = {
  regular: 'Andika-Regular.ttf',
  bold: 'Andika-Bold.ttf',
} as const;
const WEIGHTS = ['regular', 'bold'] as const;

const fonts = new Map(
  WEIGHTS.map((weight) => [
    weight,
    create(readFileSync(new URL(`../../assets/fonts/${FONTS[weight]}`, import.meta.url))),
  ]),
);

function fontOf(weight: (typeof WEIGHTS)[number]) {
  const font = fonts.get(weight);
  if (!font) throw new Error(`no font ${weight}`);
  return font;
}

describe('the glyph table', () => {
  it('holds every character that English, the Latin-1 languages and our typography print', () => {
    const letters = Array.from({ length: 0x7f - 0x20 }, (_, index) =>
      String.fromCodePoint(0x20 + index),
    );
    const latin = Array.from({ length: 0x100 - 0xc0 }, (_, index) =>
      String.fromCodePoint(0xc0 + index),
    );
    for (const character of [...letters, ...latin, ...'–—‘’“”…·×→✓']) {
      expect(GLYPHS.has(character), character).toBe(true);
    }
  });

  it('agrees with the font on every advance width, in both weights', () => {
    for (const weight of WEIGHTS) {
      const font = fontOf(weight);
      expect(font.unitsPerEm).toBe(UNITS_PER_EM);
      for (const character of GLYPHS) {
        const { advanceWidth } = font.glyphForCodePoint(character.codePointAt(0) ?? 0);
        const ours = glyphOf(character, weight)?.advanceEm;
        expect(ours, `${weight} ${character}`).toBe(advanceWidth / UNITS_PER_EM);
      }
    }
  });

  it('agrees with the font on the bounds of every outline, to a thousandth of the em', () => {
    for (const weight of WEIGHTS) {
      for (const character of GLYPHS) {
        const path = glyphOf(character, weight)?.path ?? [];
        if (path.length === 0) continue;
        const { bbox } = fontOf(weight).glyphForCodePoint(character.codePointAt(0) ?? 0);
        const { left, top, right, bottom } = pathBounds(path);
        const ours = [left, -bottom, right, -top];
        const theirs = [bbox.minX, bbox.minY, bbox.maxX, bbox.maxY];
        ours.forEach((value, index) => {
          const expected = (theirs[index] ?? 0) / UNITS_PER_EM;
          expect(Math.abs(value - expected), `${weight} ${character}`).toBeLessThan(0.001);
        });
      }
    }
  });

  it('agrees with the font on the height of capitals', () => {
    const font = fontOf('regular');
    expect(CAP_HEIGHT_EM).toBe(font.capHeight / font.unitsPerEm);
  });

  it('has nothing for a character outside it', () => {
    expect(glyphOf('漢', 'regular')).toBeUndefined();
    expect(glyphOf('toString', 'regular')).toBeUndefined();
  });
});
