// Letters as outlines: the table made from the font files, read as paths.
import type { Path } from '../base/index.ts';
import table from './glyphs.generated.json' with { type: 'json' };
import { pathFromText } from './path-text.ts';

export type GlyphWeight = 'regular' | 'bold';

export interface Glyph {
  /** Distance to the next letter's origin, in ems. */
  readonly advanceEm: number;
  /** Outline in ems, origin on the baseline, y down; fill it with the rule `nonzero`. */
  readonly path: Path;
}

type Entry = readonly [advance: number, outline: string];
type Entries = Readonly<Record<string, Entry>>;

const ENTRIES = { regular: table.regular, bold: table.bold } as unknown as Readonly<
  Record<GlyphWeight, Entries>
>;

/** Characters that have a glyph, the same in both weights. */
export const GLYPHS: ReadonlySet<string> = new Set(Object.keys(ENTRIES.regular));

/** Height of a capital above the baseline, in ems. */
export const CAP_HEIGHT_EM = table.capHeight / table.unitsPerEm;

const read = new Map<string, Glyph>();

/** The glyph of one character; none where the table lacks it (`GLYPHS` tells). */
export function glyphOf(character: string, weight: GlyphWeight): Glyph | undefined {
  const entry = entryOf(character, weight);
  if (!entry) return undefined;
  const key = `${weight} ${character}`;
  const glyph = read.get(key) ?? {
    advanceEm: entry[0] / table.unitsPerEm,
    path: pathFromText(entry[1], table.unitsPerEm, -table.unitsPerEm),
  };
  read.set(key, glyph);
  return glyph;
}

/** The advance in font units; none where the table lacks the character. */
export function advanceUnits(character: string, weight: GlyphWeight): number | undefined {
  return entryOf(character, weight)?.[0];
}

/** Font units in one em. */
export const UNITS_PER_EM = table.unitsPerEm;

function entryOf(character: string, weight: GlyphWeight): Entry | undefined {
  return Object.hasOwn(ENTRIES[weight], character) ? ENTRIES[weight][character] : undefined;
}
