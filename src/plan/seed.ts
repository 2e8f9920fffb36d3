// Seeds from words, so that a plan for a child and a day is always the same one.

/** FNV-1a of 32 bits (Fowler, Noll and Vo; constants from memory) over code points. */
export function seedOf(...words: readonly string[]): number {
  let hash = 0x811c9dc5;
  for (const character of words.join('\n')) {
    hash = Math.imul(hash ^ (character.codePointAt(0) ?? 0), 0x01000193);
  }
  return hash >>> 0;
}
