// What is done to words of every language alike.

/** With a capital at its beginning, as a sentence has it. */
export function capitalised(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
