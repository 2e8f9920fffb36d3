// The characters of a sheet code: an alphabet without look-alikes, the check character, and reading what was typed.
import { accept, asGot, type Result, refuse, told } from '../base/index.ts';

/**
 * 23 characters, so that arithmetic modulo the prime 23 guards them. Left out because they are
 * taken for others in print or handwriting: 0 O Q, 1 I L, 5 S, 8 B, and G (6), V (U), Z (2).
 */
export const CODE_ALPHABET = '234679ACDEFHJKMNPRTUWXY';
export const CODE_BASE = CODE_ALPHABET.length;

/** A primitive root modulo 23: its powers run through all of 1 to 22. */
const ROOT = 5;
const GROUP = 4;
/** The most characters of a code that is printed, hyphens included: what the QR code at the foot has room for. */
export const LONGEST_PRINTED_CODE = 200;
/**
 * The most of any code, hyphens included; longer than what is printed are those of sheets with many changes, which pack
 * files hold. With as many changes as there may be a sheet about the letters of a name comes to 4003.
 */
export const LONGEST_CODE = 4050;
/** Signs that people and word processors put between groups. */
const SEPARATORS = /[\s\-\u2010-\u2015\u2212]/u;

/**
 * The check character of `digits` (each 0 to 22, check not included).
 *
 * With the check c as the last of n digits d(n−1) … d(0), the sum Σ d(i)·5^i + n is 0 modulo 23.
 * One wrong digit changes the sum by (d − d′)·5^i. Neither factor is a multiple of the prime 23,
 * as 0 < |d − d′| < 23, so the sum is no longer 0. A swap of neighbours changes it by
 * (d(i) − d(i+1))·5^i·(1 − 5), and 4 is no multiple of 23 either: the sum is 0 only if both were
 * the same. As 5 has order 22, the same holds of any two digits less than 22 places apart. The
 * length stands in the sum because a lost or doubled character moves all others. (The pure
 * systems of ISO/IEC 7064 weigh by powers of a radix in the same way.)
 */
export function checkDigitOf(digits: readonly number[]): number {
  const sum = weightedSum([...digits, 0]);
  return (CODE_BASE - sum) % CODE_BASE;
}

/** Whether `digits`, check included, carry their right check. */
export function isChecked(digits: readonly number[]): boolean {
  return weightedSum(digits) === 0;
}

function weightedSum(digits: readonly number[]): number {
  let sum = 0;
  for (const digit of digits) sum = (sum * ROOT + digit) % CODE_BASE;
  return (sum + digits.length) % CODE_BASE;
}

/** Digits as characters in groups of four: `3HKM-29XA-…`. */
export function groupedText(digits: readonly number[]): string {
  const characters = digits.map((digit) => CODE_ALPHABET.charAt(digit));
  const groups: string[] = [];
  for (let start = 0; start < characters.length; start += GROUP) {
    groups.push(characters.slice(start, start + GROUP).join(''));
  }
  return groups.join('-');
}

/** Longer codes are those of sheets that were changed; where room is short their beginning stands for them. */
const LONGEST_IN_FULL = 49;

/** Whether the sheet has no room for the code, so that a pack file must hold it. */
export function isTooLongToPrint(code: string): boolean {
  return code.length > LONGEST_PRINTED_CODE;
}

/** The code where there is room for a short one alone, such as in a list. */
export function shortCode(code: string): string {
  return code.length <= LONGEST_IN_FULL ? code : `${code.slice(0, 4 * (GROUP + 1) - 1)} …`;
}

/**
 * The digits of a typed code, whatever its case, spaces and hyphens.
 * Refuses any other character, look-alikes too, with its place (hyphens not counted).
 */
export function digitsOf(typed: string): Result<readonly number[]> {
  if (typed.length > LONGEST_CODE) {
    return refuse({
      code: 'too-big',
      at: 'sheet code',
      got: typed.length,
      max: LONGEST_CODE,
      unit: told('reasons', 'amount.characters'),
    });
  }
  const digits: number[] = [];
  for (const character of typed) {
    if (SEPARATORS.test(character)) continue;
    const digit = CODE_ALPHABET.indexOf(asciiUpper(character));
    if (digit === -1) return refuseCharacter(character, digits.length + 1);
    digits.push(digit);
  }
  return digits.length === 0
    ? refuse({
        code: 'missing',
        at: 'sheet code',
        expected: told('reasons', 'expected.code'),
      })
    : accept(digits);
}

function refuseCharacter(character: string, place: number): Result<never> {
  return refuse({
    code: 'unreadable',
    at: `sheet code › character ${place}`,
    got: asGot(character),
    expected: told('reasons', 'expected.character', { alphabet: CODE_ALPHABET }),
  });
}

/** Upper case for a to z alone: other scripts have letters that change into two. */
function asciiUpper(character: string): string {
  return /^[a-z]$/.test(character) ? character.toUpperCase() : character;
}
