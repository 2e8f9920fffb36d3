// Codes that are printed stay readable: what version 1 of the maker wrote, for as long as sheets lie in drawers.
import { describe, expect, it } from 'vitest';
import { readCode, writeCode } from './code.ts';
import type { SheetSpec } from './sheet-spec.ts';

/**
 * Packed by a script of its own (in another language) from the list of fields, the ranges of the
 * parameters and the rule of the check character. If one of these fails, the meaning of printed
 * codes has changed: raise the maker's version and keep a reader for the old one.
 */
const PRINTED: readonly (readonly [string, SheetSpec])[] = [
  [
    '34DY-JMKD-AU7C-K44T-XJR',
    {
      activity: 'in-every-box',
      step: 4,
      values: { content: 'shapes', response: 'ring', shared: 2, nearMisses: 0 },
      seed: 3735928559,
      tasks: 2,
      page: { paper: 'A4', orientation: 'landscape' },
      print: 'colour',
    },
  ],
  [
    '3222-2222-DJMK-KE',
    {
      activity: 'by-key',
      step: 7,
      values: {},
      seed: 1,
      tasks: 1,
      page: { paper: 'Letter', orientation: 'portrait' },
      print: 'grey',
    },
  ],
  [
    '3EFE-TCPY-K2N7-YF',
    {
      activity: 'copy-pattern',
      step: 1,
      values: {},
      seed: 4294967295,
      tasks: 3,
      page: { paper: 'A4', orientation: 'portrait' },
      print: 'colour',
    },
  ],
];

describe('a code of version 1', () => {
  it.each(PRINTED)('%s still means its sheet, and is still what that sheet gets', (code, spec) => {
    expect(readCode(code)).toEqual({ ok: true, value: spec });
    expect(writeCode(spec)).toBe(code);
  });
});
