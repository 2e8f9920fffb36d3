// The order of words that run both ways, by the Unicode Bidirectional Algorithm (Unicode Standard Annex #9).
import bidiFactory from 'bidi-js';
import type { Ordering } from '../page/index.ts';

const bidi = bidiFactory();

export const ORDERING: Ordering = {
  levels: (words, base) => bidi.getEmbeddingLevels(words, base ?? 'auto').levels,
  mirrored: (character) => bidi.getMirroredCharacter(character) ?? character,
};
