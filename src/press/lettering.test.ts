// Setting a line: letters stand where the measuring of text says, kerned by no one.
import { expect, test } from 'vitest';
import { text, textWidthMm } from '../page/index.ts';
import { lettersOf } from './lettering.ts';

test('letters stand one advance after another from where the anchor puts the line', () => {
  const width = textWidthMm('AVA', 10);
  for (const [anchor, from] of [
    ['start', 100],
    ['middle', 100 - width / 2],
    ['end', 100 - width],
  ] as const) {
    const letters = lettersOf(text('AVA', 100, 50, 10, { anchor }));
    expect(letters.map(({ xMm }) => xMm)).toEqual([
      from,
      from + textWidthMm('A', 10),
      from + textWidthMm('A', 10) + textWidthMm('V', 10),
    ]);
  }
});

test('a letter and its accent, written as two characters, are set as one', () => {
  expect(lettersOf(text('cafe\u0301', 0, 0, 10)).map(({ character }) => character)).toEqual([
    ...'café',
  ]);
});

test('what the font lacks is an empty box as wide as it is measured, and the rest goes on after it', () => {
  const letters = lettersOf(text('a\u{1F642}\u0007\uD800b', 0, 0, 10));
  expect(letters.map(({ known }) => known)).toEqual([true, false, false, false, true]);
  expect(letters.at(-1)?.xMm).toBeCloseTo(textWidthMm('a\u{1F642}\u0007\uD800', 10), 9);
  for (const { outline } of letters.slice(1, 4)) {
    expect(outline.filter(([letter]) => letter === 'M')).toHaveLength(2);
  }
});
