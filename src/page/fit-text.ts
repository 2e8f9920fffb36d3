// Text that must stay inside a place: measured, and shortened only where nothing else helps.
import { clustersOf } from './faces.ts';
import type { Text } from './scene.ts';
import { textWidthMm } from './type.ts';

/** The words, or as many of their first characters as fit with an ellipsis; empty where none fit. */
export function fitText(
  words: string,
  widthMm: number,
  emMm: number,
  weight: Text['weight'] = 'regular',
): string {
  if (textWidthMm(words, emMm, weight) <= widthMm) return words;
  const characters = [...clustersOf(words)];
  while (characters.length > 0) {
    characters.pop();
    const shortened = `${characters.join('').trimEnd()}…`;
    if (textWidthMm(shortened, emMm, weight) <= widthMm) return shortened;
  }
  return '';
}

/** The largest em up to `emMm` and down to `leastEmMm` at which the words are no wider than `widthMm`. */
export function fitEm(
  words: string,
  widthMm: number,
  emMm: number,
  leastEmMm: number,
  weight: Text['weight'] = 'regular',
): number {
  const width = textWidthMm(words, emMm, weight);
  return width <= widthMm ? emMm : Math.max(leastEmMm, (emMm * widthMm) / width);
}
