// How far drawn things reach, held against what the page says of its own ink.
import { expect, test } from 'vitest';
import { inkArea, text } from '../page/index.ts';
import { boundsOf } from './bounds.ts';

test.each(['start', 'middle', 'end'] as const)(
  'words whose place is their %s lie where the page sets them, whichever way they run',
  (anchor) => {
    for (const direction of ['ltr', 'rtl'] as const) {
      const words = text('fold', 40, 20, 3, { anchor, direction });
      const { left, right } = boundsOf(words);
      const ink = inkArea(words);
      expect(left, direction).toBeCloseTo(ink?.left ?? 0, 9);
      expect(right - left, direction).toBeCloseTo(ink?.width ?? 0, 9);
    }
  },
);
