// What a place of a task is called in words, from the names of the fields that lead to it.
import type { Path, Place } from './places.ts';

/** What one item of a list is called, by the name of the list. */
const ITEMS: Readonly<Record<string, string>> = {
  boxes: 'box',
  figures: 'figure',
  cells: 'cell',
  choices: 'choice',
  candidates: 'choice',
  offered: 'choice',
  pairs: 'pair',
  rows: 'row',
  rowHeads: 'row head',
  columnHeads: 'column head',
  key: 'key entry',
  items: 'figure',
  loose: 'loose figure',
  pieces: 'piece',
  models: 'model',
  shadows: 'shadow',
  starts: 'start',
  ends: 'end',
  first: 'first picture, place',
  second: 'second picture, place',
  field: 'field, place',
  row: 'place',
  set: 'figure to remember',
  tangle: 'outline',
};
const ALONE: Readonly<Record<string, string>> = { model: 'model', part: 'given part' };

/** Such as "box 2, figure 3", "key entry 1", "model". */
export function placeName({ path }: Pick<Place, 'path'>): string {
  const parts = path.flatMap((step, index) => {
    if (typeof step === 'string') {
      const isList = typeof path[index + 1] === 'number';
      return isList || ALONE[step] === undefined ? [] : [ALONE[step]];
    }
    const list = path[index - 1];
    return [`${typeof list === 'string' ? wholeName(list) : 'place'} ${step + 1}`];
  });
  return parts.join(', ');
}

/** What an item of the list at the path is called, such as "box"; a list in a list has items without a name. */
export function itemName(path: Path): string {
  const last = path.at(-1);
  return typeof last === 'string' ? (wholeName(last).split(', ').at(-1) ?? '') : 'place';
}

function wholeName(list: string): string {
  return ITEMS[list] ?? list.replace(/s$/, '');
}
