// Text that must fit: never wider than its room, and shortened only as far as needed.
import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import { loadAllScripts } from '../../tests/outside/script-fonts.ts';
import { testSeed } from '../../tests/seed.ts';
import { fitEm, fitText, textWidthMm } from './index.ts';

const seed = testSeed('fit-text');

beforeAll(loadAllScripts);

const lines = fc.record({
  words: fc.string({ maxLength: 40, unit: 'grapheme' }),
  widthMm: fc.integer({ min: 0, max: 80 }),
});

test('text is never wider than its room', () => {
  fc.assert(
    fc.property(lines, ({ words, widthMm }) => {
      expect(textWidthMm(fitText(words, widthMm, 4), 4)).toBeLessThanOrEqual(widthMm);
    }),
    { seed },
  );
});

test('what fits is left alone; what does not keeps its beginning and ends with an ellipsis', () => {
  const words = 'Which colours are in every box?';
  const full = textWidthMm(words, 4);
  expect(fitText(words, full, 4)).toBe(words);
  const shortened = fitText(words, full - 0.1, 4);
  expect(shortened).toMatch(/^Which colours are in every b\S*…$/);
  expect(fitText(words, 0.5, 4)).toBe('');
});

test('the em shrinks just enough, and not below its least', () => {
  const words = 'Which colours are in every box?';
  const full = textWidthMm(words, 4);
  expect(fitEm(words, full, 4, 2)).toBe(4);
  expect(textWidthMm(words, fitEm(words, full * 0.8, 4, 2))).toBeCloseTo(full * 0.8, 6);
  expect(fitEm(words, full * 0.1, 4, 2)).toBe(2);
});
