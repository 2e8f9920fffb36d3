// How wide words are when printed in the page's font, and where they break into lines.
import { moveBy, type Path, transformPath } from '../base/index.ts';
import { type GlyphWeight, glyphOf, UNITS_PER_EM } from '../figures/index.ts';
import { clustersOf } from './faces.ts';
import { fromTheLeft, glyphPath, isSetPlainly, plainEm, plainUnits, setLine } from './setting.ts';

/**
 * Width of one line of words in mm; `emMm` is the height of the em. The page's own letters are set without kerning, those
 * of other scripts as their fonts shape them; a defect where these are not registered (`registerFaces`).
 */
export function textWidthMm(words: string, emMm: number, weight: GlyphWeight = 'regular'): number {
  if (!isSetPlainly(words)) return setLine(words, weight).widthEm * emMm;
  const units = [...words.normalize('NFC')].reduce(
    (sum, character) => sum + plainUnits(character, weight),
    0,
  );
  return (units * emMm) / UNITS_PER_EM;
}

/**
 * The words in lines no wider than `widthMm`, broken at spaces and line ends; a word wider than a line
 * is broken between letters, never inside a letter with what joins it. Every line holds at least one character.
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
  for (const character of clustersOf(word)) {
    const last = parts.at(-1);
    if (last !== undefined && fits(last + character)) parts[parts.length - 1] = last + character;
    else parts.push(character);
  }
  return parts;
}

/** The outlines of one line of words in ems, its left end on the baseline at (0, 0). */
export function wordsPath(words: string, weight: GlyphWeight): Path {
  return isSetPlainly(words) ? plainPath(words, weight) : setPath(words, weight);
}

function setPath(words: string, weight: GlyphWeight): Path {
  return setLine(words, weight).runs.flatMap((run) => {
    const { shaped } = run;
    const path = shaped
      ? shaped.glyphs.flatMap((glyph) => glyphPath(shaped.face, glyph))
      : plainPath(fromTheLeft(run).join(''), weight);
    return transformPath(path, moveBy(run.xEm, 0));
  });
}

function plainPath(words: string, weight: GlyphWeight): Path {
  let atEm = 0;
  return [...words.normalize('NFC')].flatMap((character) => {
    const glyph = glyphOf(character, weight);
    const path = glyph ? transformPath(glyph.path, moveBy(atEm, 0)) : [];
    atEm += plainEm(character, weight);
    return path;
  });
}
