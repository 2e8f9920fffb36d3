// English wording that several activities share: numbers, lists, and what a figure is called among others.
import { CONTENT_IDS, contentName, type Figure, figureName } from '../figures/index.ts';

const NUMBERS =
  'no one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty'.split(
    ' ',
  );
const ORDINALS = 'first second third fourth fifth sixth seventh eighth ninth tenth'.split(' ');

/** A phrase for every content, for a parameter that offers them all. */
export const CONTENT_PHRASES: Readonly<Record<string, string>> = Object.fromEntries(
  CONTENT_IDS.map((content) => [content, contentName(content)]),
);

/** The number as a word up to twenty, in figures above. */
export function numberWord(count: number): string {
  return NUMBERS[count] ?? String(count);
}

/** Such as "one answer", "three answers". */
export function counted(count: number, one: string, several: string): string {
  return `${numberWord(count)} ${count === 1 ? one : several}`;
}

/** "first" for place 0, up to "tenth"; then "number 11". */
export function ordinalWord(place: number): string {
  return ORDINALS[place] ?? `number ${place + 1}`;
}

/** Such as "red, blue and green". */
export function listOf(names: readonly string[]): string {
  const last = names.at(-1) ?? '';
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}

export function capitalised(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** The figure's name, with its size by its rank among the sizes of `all`, where sizes differ. */
export function nameAmong(all: readonly Figure[], { size = 1, ...rest }: Figure): string {
  const sizes = [...new Set(all.map((figure) => figure.size ?? 1))].sort((a, b) => a - b);
  if (sizes.length < 2) return figureName(rest);
  return `${sizeWord(sizes.indexOf(size), sizes.length)} ${figureName(rest)}`;
}

function sizeWord(rank: number, count: number): string {
  if (count === 2) return rank === 0 ? 'small' : 'big';
  if (rank === 0) return 'smallest';
  if (rank === count - 1) return 'biggest';
  return count === 3 ? 'middle-sized' : `${ordinalWord(rank)} smallest`;
}
