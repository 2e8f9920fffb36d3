// One line of words set: stretches of one script that run one way, each with its place on the line.
import { moveBy, type Path, transformPath } from '../base/index.ts';
import { advanceUnits, type GlyphWeight, UNITS_PER_EM } from '../figures/index.ts';
import type { Direction } from '../languages/index.ts';
import {
  clustersOf,
  type Face,
  faceOf,
  isPlain,
  orderingOrNone,
  type PlacedGlyph,
  scriptOf,
} from './faces.ts';
import type { Text } from './scene.ts';

/** What a character without a glyph takes, in ems: as wide as any letter, so that nothing runs over. */
const UNKNOWN_EM = 1;

/** A stretch of words set with one font. */
export interface SetRun {
  /** As they are read, not as they stand. */
  readonly words: string;
  /** What is drawn of them: brackets are turned where words run to the left. */
  readonly shown: string;
  /** Of its left end, in ems from the left end of the line. */
  readonly xEm: number;
  readonly widthEm: number;
  /** Whether its characters run to the left. */
  readonly isLeftward: boolean;
  /** Absent: the page's own letters, one by one. */
  readonly shaped?: { readonly face: Face; readonly glyphs: readonly PlacedGlyph[] };
}

export interface SetLine {
  /** As they are read. */
  readonly runs: readonly SetRun[];
  readonly widthEm: number;
}

/** Width of a character of the page's own letters in units of their font. */
export function plainUnits(character: string, weight: GlyphWeight): number {
  return advanceUnits(character, weight) ?? UNKNOWN_EM * UNITS_PER_EM;
}

/** The same in ems. */
export function plainEm(character: string, weight: GlyphWeight): number {
  return plainUnits(character, weight) / UNITS_PER_EM;
}

/** Whether every press sets the words letter by letter from left to right, as the table says. */
export function isSetPlainly(words: string, direction?: Direction): boolean {
  return isPlain(words) && (direction !== 'rtl' || orderingOrNone() === undefined);
}

/**
 * The line in its runs. `direction` is that of the paragraph (absent: of the first strong letter). A defect where the
 * fonts of a script are not registered.
 */
export function setLine(words: string, weight: GlyphWeight, direction?: Direction): SetLine {
  const stretches = stretchesOf(words.normalize('NFC'), direction);
  const measured = stretches.map((stretch) => measure(stretch, weight));
  let atEm = 0;
  const lefts = new Map<Stretch, number>();
  for (const place of visualOrder(stretches.map(({ level }) => level))) {
    const stretch = stretches[place];
    if (stretch === undefined) continue;
    lefts.set(stretch, atEm);
    atEm += measured[place]?.widthEm ?? 0;
  }
  const runs = measured.map((run, place) => {
    const stretch = stretches[place];
    return { ...run, xEm: (stretch && lefts.get(stretch)) ?? 0 };
  });
  return { runs, widthEm: atEm };
}

/** The outlines of a shaped run in ems from its left end on the baseline. */
export function glyphPath(face: Face, { id, xEm, yEm }: PlacedGlyph): Path {
  return transformPath(face.outline(id), moveBy(xEm, -yEm));
}

const SHARES = { start: 0, middle: 0.5, end: 1 } as const;

/** The share of a line's width that lies left of its anchor. */
export function leftShare({ anchor, direction }: Pick<Text, 'anchor' | 'direction'>): number {
  return direction === 'rtl' ? 1 - SHARES[anchor] : SHARES[anchor];
}

/** A name among other words, so that it is ordered by itself whichever way it runs. */
export function isolated(name: string): string {
  return isPlain(name) ? name : `\u2068${name}\u2069`;
}

interface Stretch {
  readonly words: string;
  readonly shown: string;
  readonly script: ReturnType<typeof scriptOf>;
  readonly level: number;
}

/** Says how words are ordered and is not seen (Unicode Standard Annex #9, 2). */
const ORDER_SIGN = /^[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]$/;

function stretchesOf(words: string, direction: Direction | undefined): readonly Stretch[] {
  const ordering = orderingOrNone();
  const levels = ordering?.levels(words, direction);
  const stretches: Stretch[] = [];
  let at = 0;
  for (const cluster of clustersOf(words)) {
    const level = levels?.[at] ?? 0;
    at += cluster.length;
    if (ORDER_SIGN.test(cluster)) continue;
    const script = scriptOf(cluster);
    const shown =
      script === undefined && level % 2 === 1
        ? [...cluster].map((character) => ordering?.mirrored(character) ?? character).join('')
        : cluster;
    const last = stretches.at(-1);
    if (last?.script === script && last?.level === level) {
      stretches[stretches.length - 1] = {
        ...last,
        words: last.words + cluster,
        shown: last.shown + shown,
      };
    } else stretches.push({ words: cluster, shown, script, level });
  }
  return stretches;
}

function measure(stretch: Stretch, weight: GlyphWeight): Omit<SetRun, 'xEm'> {
  const { words, shown, script, level } = stretch;
  const isLeftward = level % 2 === 1;
  if (script === undefined) {
    const widthEm = [...shown].reduce((sum, each) => sum + plainEm(each, weight), 0);
    return { words, shown, widthEm, isLeftward };
  }
  const face = faceOf(script, weight);
  const { glyphs, widthEm } = face.layout(words, isLeftward ? 'rtl' : 'ltr');
  return { words, shown, widthEm, isLeftward, shaped: { face, glyphs } };
}

/** Characters of a run of the page's own letters from left to right. */
export function fromTheLeft({ shown, isLeftward }: SetRun): readonly string[] {
  return isLeftward ? [...shown].reverse() : [...shown];
}

/** Rule L2: from the highest level down to the lowest odd one, what is at it or above is turned round. */
function visualOrder(levels: readonly number[]): readonly number[] {
  const order = levels.map((_, place) => place);
  const odd = levels.filter((level) => level % 2 === 1);
  for (let level = Math.max(0, ...levels); level >= Math.min(...odd); level--) {
    for (let from = 0; from < order.length; from++) {
      let to = from;
      while (to < order.length && (levels[order[to] ?? 0] ?? 0) >= level) to++;
      order.splice(from, to - from, ...order.slice(from, to).reverse());
      from = Math.max(from, to - 1);
    }
  }
  return order;
}
