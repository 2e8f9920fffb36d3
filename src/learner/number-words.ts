// Small numbers as English words, for sentences that adults read.

const WORDS =
  'no one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty'.split(
    ' ',
  );

/** The number as a word up to twenty, in figures above. */
export function numberWord(count: number): string {
  return WORDS[count] ?? String(count);
}

/** Such as "one answer", "three answers". */
export function counted(count: number, one: string, several: string): string {
  return `${numberWord(count)} ${count === 1 ? one : several}`;
}
