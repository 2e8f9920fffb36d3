// Words as the page's fonts can print them: what they have no letters for becomes a line to write on by hand.
import { GLYPHS } from '../figures/index.ts';
import { clustersOf, faceOf, hasFace, scriptOf } from './faces.ts';

export interface Printable {
  readonly words: string;
  /** Whether all that can be read is there; signs such as emoji may be left out. */
  readonly isWhole: boolean;
}

/** Long enough for a short name by hand; underlines, so that it is wrapped and measured like a word. */
export const WRITE_IN = '_'.repeat(14);

/** What words can be read without: signs, invisible joiners, the choices between looks of a sign. */
const LEFT_OUT = /[\p{S}\p{P}\p{C}\p{Variation_Selector}]|\u20E3/u;

/**
 * Marks over and under a letter that no name has and that would rise into the line above: after the second of a letter
 * that most languages write with one or two, after the fourth of any other (common practice, no source).
 */
const TOO_HIGH =
  /(?<=[\p{sc=Latin}\p{sc=Greek}\p{sc=Cyrillic}]\p{M}{2})\p{M}+|(?<=\p{M}{4})\p{M}+/gu;

/** Each letter with its marks as one where there is such a one, and no more marks than stay in their line. */
function composed(words: string): string {
  return words.normalize('NFD').replaceAll(TOO_HIGH, '').normalize('NFC');
}

/**
 * The words without signs that no font has. A word of which a letter is missing is a line to write on, several in a
 * row are one, and so is a line of which nothing is left. Line ends stay.
 */
export function printable(words: string): Printable {
  const lines = composed(words).split('\n').map(printableLine);
  return {
    words: lines.map((line) => line.words).join('\n'),
    isWhole: lines.every(({ isWhole }) => isWhole),
  };
}

/** A name as it can be printed; empty, for a pen, where a letter of it is missing. */
export function printableName(name: string): string {
  const { words, isWhole } = printable(name.trim().replaceAll(/\s+/g, ' '));
  return isWhole ? words : '';
}

function printableLine(line: string): Printable {
  const words = line.split(/[ \t\r]+/).filter((word) => word !== '');
  const parts = words.map(knownPart).filter((part) => part !== '');
  if (parts.length === 0 && words.length > 0) return { words: WRITE_IN, isWhole: false };
  const printed = parts
    .map((part) => part ?? WRITE_IN)
    .filter((part, place, all) => part !== WRITE_IN || all[place - 1] !== WRITE_IN);
  return { words: printed.join(' '), isWhole: !parts.includes(undefined) };
}

/** The word less the signs that no font has; `undefined` where a letter is missing. */
function knownPart(word: string): string | undefined {
  const parts = clustersOf(word).map((cluster) =>
    isShaped(cluster) ? cluster : plainPart([...cluster]),
  );
  return parts.includes(undefined) ? undefined : parts.join('');
}

function plainPart(characters: readonly string[]): string | undefined {
  const missing = characters.filter((character) => !GLYPHS.has(character));
  if (missing.some((character) => !LEFT_OUT.test(character))) return undefined;
  return characters.filter((character) => GLYPHS.has(character)).join('');
}

/** Whether there is a font of another script that has all that can be seen of it. */
function isShaped(cluster: string): boolean {
  const script = scriptOf(cluster);
  if (script === undefined || !hasFace(script)) return false;
  const face = faceOf(script, 'regular');
  return [...cluster].every((character) => JOINER.test(character) || face.has(character));
}

/** Says that letters join or do not; it has no glyph of its own. */
const JOINER = /[\u200c\u200d]/;
