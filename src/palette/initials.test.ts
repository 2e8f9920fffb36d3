// Promises of the marks.
import { describe, expect, it } from 'vitest';
import { COLOUR_NAMES, initialOf } from './index.ts';

describe('initials', () => {
  it('are unlike each other, in capitals and small letters alike', () => {
    const marks = COLOUR_NAMES.map((name) => initialOf(name).toLowerCase());
    expect(new Set(marks).size).toBe(COLOUR_NAMES.length);
  });

  it.each(COLOUR_NAMES)(
    'of %s is its first letter, with its last where that alone is taken',
    (name) => {
      const first = name.charAt(0).toUpperCase();
      expect([first, first + name.at(-1)]).toContain(initialOf(name));
    },
  );

  it('are single letters for one colour of every first letter', () => {
    const firsts = new Set(COLOUR_NAMES.map((name) => name.charAt(0)));
    const singles = COLOUR_NAMES.map(initialOf).filter((mark) => mark.length === 1);
    expect(singles).toHaveLength(firsts.size);
  });
});
