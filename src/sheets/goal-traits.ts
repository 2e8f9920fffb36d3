// What contents are about and what responses ask of the hand, in the few kinds that curricula speak of.

export const TOPICS = [
  'colours',
  'shapes',
  'sizes',
  'directions',
  'quantities',
  'symbols',
  'looks',
  'several',
] as const;

/** `symbols` are letters, numerals and signs; `looks` pictures, textures and lines; `several` two or more attributes at once. */
export type Topic = (typeof TOPICS)[number];

const BY_CONTENT: Readonly<Record<string, readonly Topic[]>> = {
  colours: ['colours'],
  shapes: ['shapes'],
  sizes: ['sizes'],
  directions: ['directions'],
  capitals: ['symbols'],
  'small-letters': ['symbols'],
  numerals: ['symbols'],
  signs: ['symbols'],
  'dot-quantities': ['quantities'],
  textures: ['looks'],
  pictures: ['looks'],
  'shapes-and-colours': ['shapes', 'colours', 'several'],
  'shapes-and-sizes': ['shapes', 'sizes', 'several'],
  'colours-and-sizes': ['colours', 'sizes', 'several'],
  'directions-and-colours': ['directions', 'colours', 'several'],
  'shapes-colours-and-sizes': ['shapes', 'colours', 'sizes', 'several'],
  'cyrillic-capitals': ['symbols'],
  'cyrillic-small': ['symbols'],
  'greek-capitals': ['symbols'],
  'greek-small': ['symbols'],
  'devanagari-letters': ['symbols'],
  'arabic-letters': ['symbols'],
  'spanish-capitals': ['symbols'],
  'spanish-small': ['symbols'],
  'devanagari-varnamala': ['symbols'],
  'devanagari-numerals': ['symbols'],
  'arabic-letters-with-hamza': ['symbols'],
  'arabic-indic-numerals': ['symbols'],
  'dot-layouts': ['looks'],
  'shapes-and-directions': ['shapes', 'directions', 'several'],
  dots: ['looks'],
  'filled-cells': ['colours'],
  lines: ['looks'],
  'picture-kinds': ['looks'],
};

/** What a content of any activity is about; a defect where a content is not in the table. */
export function topicsOf(content: string): readonly Topic[] {
  return found(BY_CONTENT, content, 'content');
}

/** Marks with a pen (`marks`), draws whole figures as well (`draws-figures`), cuts out. */
export type Hand = 'marks' | 'draws-figures' | 'cuts';

const BY_RESPONSE: Readonly<Record<string, readonly Hand[]>> = {
  point: [],
  sticker: [],
  counters: [],
  ring: ['marks'],
  cross: ['marks'],
  dot: ['marks'],
  dots: ['marks'],
  sign: ['marks'],
  signs: ['marks'],
  join: ['marks'],
  trace: ['marks'],
  fill: ['marks'],
  'colour-in': ['marks'],
  'draw-line': ['marks'],
  draw: ['marks', 'draws-figures'],
  cut: ['cuts'],
};

/** What a response of any activity asks of the hand; a defect where it is not in the table. */
export function handsOf(response: string): readonly Hand[] {
  return found(BY_RESPONSE, response, 'response');
}

function found<T>(table: Readonly<Record<string, T>>, name: string, what: string): T {
  const value = Object.hasOwn(table, name) ? table[name] : undefined;
  if (value === undefined)
    throw new Error(`goals › ${what}: expected one of the table, got ${name}`);
  return value;
}
