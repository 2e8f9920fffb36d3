// What the glyphs of words that run to the left read: readers of PDF turn such words round by the places of their letters.
import type { PlacedGlyph } from '../page/index.ts';

/** Letters or glyphs that are read as one. */
export interface Piece {
  /** What they read; absent: what they show. */
  readonly reads?: string;
  /** Drawn nowhere, there only to be read. */
  readonly isHidden?: boolean;
}

interface ReadGlyph {
  readonly glyph: PlacedGlyph;
  readonly piece: Piece;
}

/**
 * The glyphs of a leftward run of words from left to right, each letter a piece of its own. A reader takes a letter to
 * reach from the first glyph of its piece to the last, so marks come behind all letters and read nothing; what they read
 * is said by hidden marks at the left edge of their letters, where a reader looks for what follows.
 */
export function leftwardPieces(
  words: string,
  glyphs: readonly PlacedGlyph[],
): readonly ReadGlyph[] {
  const starts = [...new Set(glyphs.map(({ cluster }) => cluster))].sort((a, b) => a - b);
  const letters = glyphs.filter(isLetter);
  const lettered = new Set(letters.map(({ cluster }) => cluster));
  const marks = glyphs.filter((glyph) => !isLetter(glyph));
  return [
    ...letters.flatMap((glyph) => {
      const own = [...words.slice(glyph.cluster, starts[starts.indexOf(glyph.cluster) + 1])];
      return letterPieces(
        glyph,
        own,
        marks.find(({ cluster }) => cluster === glyph.cluster),
      );
    }),
    ...marks.map((glyph) => ({
      glyph,
      piece: { reads: lettered.has(glyph.cluster) ? '' : words.charAt(glyph.cluster) },
    })),
  ];
}

function letterPieces(
  glyph: PlacedGlyph,
  own: readonly string[],
  mark: PlacedGlyph | undefined,
): readonly ReadGlyph[] {
  if (mark === undefined) return [{ glyph, piece: { reads: own.join('') } }];
  const [letter = '', ...rest] = own;
  const hidden = rest.reverse().map((reads) => ({
    glyph: { ...mark, xEm: glyph.xEm, yEm: glyph.yEm },
    piece: { reads, isHidden: true },
  }));
  return [...hidden, { glyph, piece: { reads: letter } }];
}

/** Marks do not move the next letter on. */
function isLetter({ advanceEm }: PlacedGlyph): boolean {
  return advanceEm > 0;
}
