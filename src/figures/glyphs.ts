// Letters as outlines: the table made from the font files, read as paths.
import type { Path, PathStep } from '../base/index.ts';
import table from './glyphs.generated.json' with { type: 'json' };

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

/** Height of a capital and of a small x above the baseline, in ems. */
export const CAP_HEIGHT_EM = table.capHeight / table.unitsPerEm;
export const X_HEIGHT_EM = table.xHeight / table.unitsPerEm;

const read = new Map<string, Glyph>();

/** The glyph of one character; none where the table lacks it (`GLYPHS` tells). */
export function glyphOf(character: string, weight: GlyphWeight): Glyph | undefined {
  const entry = entryOf(character, weight);
  if (!entry) return undefined;
  const key = `${weight} ${character}`;
  const glyph = read.get(key) ?? {
    advanceEm: entry[0] / table.unitsPerEm,
    path: pathFrom(entry[1]),
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

/** Reads `M x y`, `L x y`, `Q x y x y` and `Z` in font units, y up. */
function pathFrom(outline: string): Path {
  const steps: PathStep[] = [];
  let [x, y] = [0, 0];
  for (const [step, letter, rest] of outline.matchAll(/([MLQZ])([^MLQZ]*)/g)) {
    const units = (rest ?? '').split(' ').map(Number);
    const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = units.map((unit, index) =>
      index % 2 === 0 ? unit / table.unitsPerEm : -unit / table.unitsPerEm,
    );
    if (letter === 'Z') steps.push(['Z']);
    else if (letter === 'Q') steps.push(cubicFromQuadratic(x, y, x1, y1, x2, y2));
    else if (letter === 'M' || letter === 'L') steps.push([letter, x1, y1]);
    else throw new Error(`glyphs › outline: expected M, L, Q or Z, got ${step}`);
    [x, y] = letter === 'Q' ? [x2, y2] : [x1, y1];
  }
  return steps;
}

/** Degree elevation: the same curve, exactly. */
function cubicFromQuadratic(
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  x2: number,
  y2: number,
): PathStep {
  const third = (near: number, control: number) => near + (2 / 3) * (control - near);
  return ['C', third(x0, x1), third(y0, y1), third(x2, x1), third(y2, y1), x2, y2];
}
