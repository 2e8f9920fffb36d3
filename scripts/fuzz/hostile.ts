// Values that programs stumble over, as a stranger's file may hold them.
import fc from 'fast-check';

/** Stands for a number that JSON can write and a number of JavaScript cannot hold; see `jsonText`. */
export const BEYOND_NUMBERS = '\u0001beyond numbers';

const NAMES = ['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty', 'length'];
const PATHS = ['../../x', '..', '.', '/etc/passwd', 'a/b', 'a\\b', 'C:\\x', 'CON', '~', '-', '--'];
const SIGNS = ['\u0000', 'a\u0000b', '\ud800', '\udfff', 'a\ud83dz', '\u202eabc', '\u2066a\u2069'];
const UNSEEN = ['\u200b', '\u200d', '\ufeff', '\u00ad', '\u0301', 'e\u0301\u0301\u0301', '\u2028'];
const MARKS = [
  '{{',
  '{name}',
  '{count, plural, other {#}}',
  '<b>',
  '</script>',
  '%s',
  '"',
  "'",
  '\n',
];
const BLANKS = ['', ' ', '\t', '\r\n', '\u00a0'];

const LONG = [1000, 100_000];

export const hostileText: fc.Arbitrary<string> = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom(...NAMES, ...PATHS, ...MARKS, ...BLANKS) },
  { weight: 4, arbitrary: fc.constantFrom(...SIGNS, ...UNSEEN) },
  { weight: 3, arbitrary: fc.string({ unit: 'binary', maxLength: 12 }) },
  { weight: 3, arbitrary: fc.string({ unit: 'grapheme', maxLength: 40 }) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(fc.constantFrom('a', '\ud800', '\u0301', 'م', '9', ' '), fc.constantFrom(...LONG))
      .map(([sign, times]) => sign.repeat(times)),
  },
);

const NUMBERS = [0, -0, -1, 1, 2, 0.5, -0.5, 1e-9, 31, 32, 64, 255, 256, 65_535, 65_536, 1e6];
const GREAT = [
  2 ** 31 - 1,
  2 ** 31,
  2 ** 32 - 1,
  2 ** 32,
  2 ** 53 - 1,
  2 ** 53,
  1e21,
  1e300,
  -1e300,
];

export const hostileNumber: fc.Arbitrary<number> = fc.oneof(
  fc.constantFrom(...NUMBERS),
  fc.constantFrom(...GREAT),
  fc.integer({ min: -20, max: 400 }),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
);

const DEEP = [10, 23, 24, 25, 500];
const MANY = [2, 12, 100, 1000, 100_000];

/** Any value that JSON can hold, the dangerous ones above all; `BEYOND_NUMBERS` among them. */
export const hostileValue: fc.Arbitrary<unknown> = fc.oneof(
  { weight: 30, arbitrary: hostileNumber },
  { weight: 20, arbitrary: hostileText },
  { weight: 15, arbitrary: fc.constantFrom(null, true, false, BEYOND_NUMBERS, [], {}) },
  { weight: 4, arbitrary: fc.jsonValue({ maxDepth: 3 }) },
  { weight: 2, arbitrary: fc.constantFrom(...DEEP).map(nested) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(fc.constantFrom<unknown>(0, '', null, []), fc.constantFrom(...MANY))
      .map(([value, times]) => new Array<unknown>(times).fill(value)),
  },
);

export const hostileKey: fc.Arbitrary<string> = fc.oneof(fc.constantFrom(...NAMES), hostileText);

function nested(levels: number): unknown {
  let value: unknown = [];
  for (let level = 1; level < levels; level++) value = level % 2 === 0 ? [value] : { a: value };
  return value;
}
