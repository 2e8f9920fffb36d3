// The letters of scripts other than Latin: which there are, by pool, and their outlines.
import type { Path } from '../base/index.ts';
import { pathFromText } from './path-text.ts';
import table from './script-letters.generated.json' with { type: 'json' };

export type ScriptPool = keyof typeof table.pools;

/** The characters of each pool, in the order of their alphabet. */
export const SCRIPTS: Readonly<Record<ScriptPool, string>> = table.pools;

const LETTERS: Readonly<Record<string, string>> = table.letters;

/**
 * The outline of a letter that stands alone, in a cell of side 1 about (0, 0), one scale for each script;
 * fill it with the rule `nonzero`. None where no pool holds the character.
 */
export function scriptOutline(character: string): Path | undefined {
  const outline = Object.hasOwn(LETTERS, character) ? LETTERS[character] : undefined;
  return outline === undefined ? undefined : pathFromText(outline, table.units, table.units);
}
