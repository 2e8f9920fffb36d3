// Packing of numbers with finite ranges into the fewest code digits (mixed radix), and back.
import { CODE_BASE } from './code-characters.ts';

/** A number from 0 to `radix` − 1. */
export interface Packed {
  readonly value: number;
  readonly radix: number;
}

/** The digits that hold all of `fields`; their number depends on the radices alone. */
export function packFields(fields: readonly Packed[]): number[] {
  let packed = 0n;
  for (const { value, radix } of [...fields].reverse()) {
    if (!Number.isInteger(value) || value < 0 || value >= radix) {
      throw new Error(`code packing: ${value} is not a whole number from 0 to ${radix - 1}`);
    }
    packed = packed * BigInt(radix) + BigInt(value);
  }
  return digitsIn(packed, digitsNeeded(fields.map((field) => field.radix)));
}

/** How many digits numbers with these radices take. */
export function digitsNeeded(radices: readonly number[]): number {
  const kinds = radices.reduce((product, radix) => product * BigInt(radix), 1n);
  let digits = 0;
  for (let reach = 1n; reach < kinds; reach *= BigInt(CODE_BASE)) digits += 1;
  return digits;
}

/** Takes the fields out again, one by one in the order in which they were packed. */
export interface Unpacking {
  readonly take: (radix: number) => number;
  /** Whether nothing is left over and the digits were exactly as many as the fields taken need. */
  readonly isSpent: () => boolean;
}

export function unpack(digits: readonly number[]): Unpacking {
  let rest = digits.reduce((number, digit) => number * BigInt(CODE_BASE) + BigInt(digit), 0n);
  const taken: number[] = [];
  return {
    take: (radix) => {
      taken.push(radix);
      const value = Number(rest % BigInt(radix));
      rest /= BigInt(radix);
      return value;
    },
    isSpent: () => rest === 0n && digitsNeeded(taken) === digits.length,
  };
}

function digitsIn(packed: bigint, count: number): number[] {
  const digits: number[] = [];
  let rest = packed;
  for (let place = 0; place < count; place++) {
    digits.unshift(Number(rest % BigInt(CODE_BASE)));
    rest /= BigInt(CODE_BASE);
  }
  return digits;
}
