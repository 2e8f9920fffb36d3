// What a place of a task is called in words, from the names of the fields that lead to it.
import type { Language } from '../activities/index.ts';
import type { Path, Place } from './places.ts';
import { EDITING_WORDS, type ItemKind, type PlaceKind } from './words.ts';

/** What one item of a list is, by the name of the list. */
const ITEMS: Readonly<Record<string, ItemKind>> = {
  boxes: 'box',
  figures: 'figure',
  cells: 'cell',
  choices: 'choice',
  candidates: 'candidate',
  offered: 'choice',
  pairs: 'pair',
  rows: 'row',
  rowHeads: 'row-head',
  columnHeads: 'column-head',
  key: 'entry',
  items: 'figure',
  loose: 'loose',
  pieces: 'piece',
  models: 'models',
  shadows: 'shadow',
  starts: 'start',
  ends: 'end',
  first: 'first',
  second: 'second',
  field: 'field',
  row: 'place',
  set: 'remembered',
  tangle: 'outline',
};
const ALONE: Readonly<Record<string, PlaceKind>> = { model: 'model', part: 'given' };

/** Such as "box 2, figure 3", "key entry 1", "model". */
export function placeName({ path }: Pick<Place, 'path'>, language: Language = 'en'): string {
  const words = EDITING_WORDS[language];
  const parts = path.flatMap((step, index) => {
    if (typeof step === 'number') return [words.at(itemKind(path.slice(0, index)), step)];
    const alone = typeof path[index + 1] === 'number' ? undefined : ALONE[step];
    return alone === undefined ? [] : [words.at(alone, 0)];
  });
  return parts.length === 0 ? '' : parts.reduce((outer, inner) => words.within(outer, inner));
}

/** What an item of the list at the path is; a list in a list has items without a name of their own. */
export function itemKind(path: Path): ItemKind {
  const last = path.at(-1);
  return (typeof last === 'string' ? ITEMS[last] : undefined) ?? 'place';
}
