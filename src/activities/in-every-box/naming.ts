// What the figures of a task are called in English: by what a child looks at, not by all that they are.
import {
  colourName,
  type Figure,
  figureName,
  formName,
  formOf,
  isShape,
} from '../../figures/index.ts';
import type { Printed } from './task.ts';

/** What a child looks at in a task. */
export type Look = 'colour' | 'shape' | 'letter' | 'numeral' | 'card' | 'picture';

const NOUNS: Readonly<Record<Look, readonly [one: string, several: string]>> = {
  colour: ['colour', 'colours'],
  shape: ['shape', 'shapes'],
  letter: ['letter', 'letters'],
  numeral: ['number', 'numbers'],
  card: ['dot card', 'dot cards'],
  picture: ['picture', 'pictures'],
};

const NUMBERS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight'];

/** `picture` where the figures are not all of one kind. */
export function lookOf({ boxes }: Printed): Look {
  const looks = boxes.flatMap((box) => box.figures.map(lookOfFigure));
  const [first = 'picture'] = looks;
  return looks.every((look) => look === first) ? first : 'picture';
}

function lookOfFigure(figure: Figure): Look {
  const form = formOf(figure);
  if (form === 'circle' && figure.colour !== undefined) return 'colour';
  if (form === 'dots') return 'card';
  if (form.startsWith('numeral-')) return 'numeral';
  if (/^(capital|small)-/.test(form)) return 'letter';
  return isShape(form) ? 'shape' : 'picture';
}

/** Such as "colour", "two colours". */
export function countedNoun(look: Look, count: number): string {
  const [one, several] = NOUNS[look];
  return count === 1 ? one : `${numberName(count)} ${several}`;
}

/** A number as a word up to eight, in figures beyond. */
export function numberName(count: number): string {
  return NUMBERS[count] ?? String(count);
}

/** Such as "blue", "the heart", "the small b", "the card with four dots". */
export function itemName(figure: Figure, look: Look): string {
  const form = formOf(figure);
  switch (look) {
    case 'colour':
      return figure.colour === undefined ? 'ink' : colourName(figure.colour);
    case 'card':
      return `the card with ${numberName(figure.count ?? 1)} ${figure.count === 1 ? 'dot' : 'dots'}`;
    case 'numeral':
      return `the ${form.slice('numeral-'.length)}`;
    case 'picture':
      return `the ${figureName(figure)}`;
    default:
      return `the ${formName(form)}`;
  }
}

/** Such as "red, blue and green". */
export function listOf(names: readonly string[]): string {
  const last = names.at(-1) ?? '';
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}
