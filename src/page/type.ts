// How wide words are when printed in the page's font, and where they break into lines.
import { moveBy, type Path, transformPath } from '../base/index.ts';
import { advanceUnits, type GlyphWeight, glyphOf, UNITS_PER_EM } from '../figures/index.ts';

/** What a character without a glyph takes, in ems: as wide as any letter, so that nothing runs over. */
const UNKNOWN_EM = 1;

/** Width of one line of words in mm, set without kerning; `emMm` is the height of the em. */
export function textWidthMm(words: string, emMm: number, weight: GlyphWeight = 'regular'): number {
  const units = [...words.normalize('NFC')].map(
    (character) => advanceUnits(character, weight) ?? UNKNOWN_EM * UNITS_PER_EM,
  );
  return (units.reduce((sum, unit) => sum + unit, 0) * emMm) / UNITS_PER_EM;
}

/**
 * The words in lines no wider than `widthMm`, broken at spaces and line ends; a word wider than a line
 * is broken between letters. Every line holds at least one character.
 */
export function wrapText(
  words: string,
  widthMm: number,
  emMm: number,
  weight: GlyphWeight = 'regular',
): string[] {
  const fits = (line: string) => textWidthMm(line, emMm, weight) <= widthMm;
  return words.split('\n').flatMap((paragraph) => {
    const pieces = paragraph
      .split(/[ \t]+/)
      .filter((word) => word !== '')
      .flatMap((word) => breakWord(word, fits));
    return joinPieces(pieces, fits);
  });
}

function joinPieces(pieces: readonly string[], fits: (line: string) => boolean): string[] {
  const lines: string[] = [];
  for (const piece of pieces) {
    const last = lines.at(-1);
    const longer = `${last} ${piece}`;
    if (last !== undefined && fits(longer)) lines[lines.length - 1] = longer;
    else lines.push(piece);
  }
  return lines.length > 0 ? lines : [''];
}

function breakWord(word: string, fits: (line: string) => boolean): string[] {
  if (fits(word)) return [word];
  const parts: string[] = [];
  for (const character of word) {
    const last = parts.at(-1);
    if (last !== undefined && fits(last + character)) parts[parts.length - 1] = last + character;
    else parts.push(character);
  }
  return parts;
}

/** The outlines of one line of words in ems, its start on the baseline at (0, 0), set without kerning. */
export function wordsPath(words: string, weight: GlyphWeight): Path {
  let atEm = 0;
  return [...words.normalize('NFC')].flatMap((character) => {
    const glyph = glyphOf(character, weight);
    const path = glyph ? transformPath(glyph.path, moveBy(atEm, 0)) : [];
    atEm += glyph?.advanceEm ?? UNKNOWN_EM;
    return path;
  });
}
