// The units that rows repeat: every scheme of two to four letters that does not end as it begins.

/**
 * All schemes (first A, each new letter the next one) of two to four letters that are no repeat of a
 * shorter one and in which no beginning stands at the end too. The rest, such as ABA or ABBA, are these
 * begun elsewhere or, begun so, can be read two ways: after ABA ABA a row that grows goes on A A A B.
 */
export const UNITS = [
  'AB',
  'AAB',
  'ABB',
  'ABC',
  'AAAB',
  'AABB',
  'AABC',
  'ABAC',
  'ABBB',
  'ABBC',
  'ABCB',
  'ABCC',
  'ABCD',
] as const;

/** How many different letters a unit has. */
export function letterCount(unit: string): number {
  return new Set(unit).size;
}

/** The unit over and over, cut off at `length` letters. */
export function repeated(unit: string, length: number): string {
  return unit.repeat(Math.ceil(length / unit.length)).slice(0, length);
}

/** The number of a letter: A is 0. */
export function letterNumber(letter: string): number {
  return letter.charCodeAt(0) - 'A'.charCodeAt(0);
}
