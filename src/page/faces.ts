// Faces for what the page's letter table lacks: registered once by whoever has the fonts, before pages are made.
import type { Path } from '../base/index.ts';
import { GLYPHS, type GlyphWeight } from '../figures/index.ts';
import type { Direction } from '../languages/index.ts';

/** Scripts that need a font of their own; `extended` is Cyrillic, further Latin letters and letters with marks. */
export const SCRIPTS = ['extended', 'greek', 'hebrew', 'arabic', 'devanagari'] as const;
export type Script = (typeof SCRIPTS)[number];

/** A glyph where shaping put it, in ems from the start of its run, y up. */
export interface PlacedGlyph {
  /** Its number in the font. */
  readonly id: number;
  readonly xEm: number;
  readonly yEm: number;
  /** How far it moves the next one on; marks do not. */
  readonly advanceEm: number;
  /** Where in the run's words, in UTF-16 units, the characters begin that it stands for. */
  readonly cluster: number;
}

export interface ShapedRun {
  /** From left to right. */
  readonly glyphs: readonly PlacedGlyph[];
  readonly widthEm: number;
}

/** A font of one script and weight that shapes words. */
export interface Face {
  readonly has: (character: string) => boolean;
  /** The glyphs of a stretch of one script that runs one way. */
  readonly layout: (words: string, direction: Direction) => ShapedRun;
  /** In ems from the glyph's origin, y down, for the rule `nonzero`. */
  readonly outline: (id: number) => Path;
  /** The font file (TrueType) that the glyph numbers belong to. */
  readonly file: Uint8Array;
}

/** The order of words that run both ways (Unicode Standard Annex #9). */
export interface Ordering {
  /** One level for each UTF-16 unit, odd where it runs to the left; `undefined`: by the first strong letter. */
  readonly levels: (words: string, base: Direction | undefined) => ArrayLike<number>;
  /** What a bracket looks like where words run to the left. */
  readonly mirrored: (character: string) => string;
}

/** Blocks of Unicode by script: fixed, since what an engine knows of scripts depends on its version. */
const BLOCKS: readonly (readonly [Script, RegExp])[] = [
  ['extended', /[\u0180-\u024f]|[\u0300-\u036f]|[\u0400-\u052f]|[\u1e00-\u1eff]/],
  ['greek', /[\u0370-\u03ff]/],
  ['hebrew', /[\u0590-\u05ff]/],
  ['arabic', /[\u0600-\u06ff\u0750-\u077f\u08a0-\u08ff]/],
  ['devanagari', /[\u0900-\u097f\u1cd0-\u1cff\ua8e0-\ua8ff]/],
];

interface Registered {
  readonly faces: ReadonlyMap<Script, Readonly<Record<GlyphWeight, Face>>>;
  readonly ordering?: Ordering;
}

let registered: Registered = { faces: new Map() };

/** Adds faces to those that are there; all pages made from then on are set with them. */
export function registerFaces(
  faces: ReadonlyMap<Script, Readonly<Record<GlyphWeight, Face>>>,
  ordering: Ordering,
): void {
  registered = { faces: new Map([...registered.faces, ...faces]), ordering };
}

export function hasFace(script: Script): boolean {
  return registered.faces.has(script);
}

/** A defect where the fonts of the script were not registered. */
export function faceOf(script: Script, weight: GlyphWeight): Face {
  const faces = registered.faces.get(script);
  if (!faces) {
    throw new Error(`page › faces: expected the fonts of ${script} before words in it, got none`);
  }
  return faces[weight];
}

export function orderingOrNone(): Ordering | undefined {
  return registered.ordering;
}

/** The script whose font sets a character or a letter with its marks; none where the page's own table does or none can. */
export function scriptOf(cluster: string): Script | undefined {
  const missing = [...cluster].find((character) => !GLYPHS.has(character));
  if (missing === undefined) return undefined;
  return BLOCKS.find(([, block]) => block.test(cluster.charAt(0)) || block.test(missing))?.[0];
}

/** Scripts whose fonts words need, in the order of `SCRIPTS`: load them first. */
export function scriptsIn(words: string): readonly Script[] {
  const found = new Set(clustersOf(words.normalize('NFC')).map(scriptOf));
  return SCRIPTS.filter((script) => found.has(script));
}

/** Whether words hold nothing but what is set letter by letter. */
export function isPlain(words: string): boolean {
  return !ISOLATED.test(words) && (!BEYOND.test(words) || scriptsIn(words).length === 0);
}

/** Begins a part that is ordered by itself, and is not seen (Unicode Standard Annex #9, 2.4). */
const ISOLATED = /[\u2066-\u2068]/;

/** A quick look: most words of a page have nothing of this kind. */
const BEYOND = /[\u0180-\u1fff\ua8e0-\ua8ff]/;

const MARKS = '[\\p{M}\\u200c\\u200d]*';
/** Consonants that a virama joins; lam and alef, which are one glyph; any character with its marks. */
const CLUSTER = new RegExp(
  [
    `(?:[\\u0915-\\u0939\\u0958-\\u095f]\\u093c?\\u094d\\u200d?)*[\\u0915-\\u0939\\u0958-\\u095f]${MARKS}`,
    `\\u0644${MARKS}[\\u0622\\u0623\\u0625\\u0627]${MARKS}`,
    `[^]${MARKS}`,
  ].join('|'),
  'gu',
);

/** The words in pieces that no end of a line parts: characters, and with other scripts letters with all that joins them. */
export function clustersOf(words: string): readonly string[] {
  return BEYOND.test(words) ? (words.match(CLUSTER) ?? []) : [...words];
}

/** Scripts of languages beyond the table's own letters (CLDR, likely subtags; from memory). */
const SCRIPT_OF_LANGUAGE: Readonly<Record<string, Script>> = {
  ar: 'arabic',
  fa: 'arabic',
  ur: 'arabic',
  he: 'hebrew',
  hi: 'devanagari',
  mr: 'devanagari',
  ne: 'devanagari',
  el: 'greek',
  bg: 'extended',
  ru: 'extended',
  uk: 'extended',
};

/** The scripts whose fonts a page in a language needs for its own words; `language` is a BCP 47 tag. */
export function scriptsOfLanguage(language: string): readonly Script[] {
  const script = SCRIPT_OF_LANGUAGE[language.split('-')[0] ?? ''];
  return script === undefined ? [] : [script];
}
