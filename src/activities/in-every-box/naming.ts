// What the figures of a task are called in English: by what a child looks at, not by all that they are.
import {
  colourName,
  type Figure,
  formName,
  formOf,
  isLetter,
  isNumeral,
  isShape,
  isSign,
} from '../../figures/index.ts';
import type { Attribute } from '../figure-comparison.ts';
import { attributesChanging } from '../figure-features.ts';
import { counted, listOf, nameAmong } from '../wording.ts';
import type { Printed } from './task.ts';

/** What a child looks at in a task; `mixed` where figures differ in several ways or are not of one kind. */
export type Look =
  | 'colour'
  | 'shape'
  | 'size'
  | 'direction'
  | 'letter'
  | 'numeral'
  | 'sign'
  | 'card'
  | 'pattern'
  | 'mixed';

const NOUNS: Readonly<Record<Look, readonly [one: string, several: string]>> = {
  colour: ['colour', 'colours'],
  shape: ['shape', 'shapes'],
  size: ['size', 'sizes'],
  direction: ['direction', 'directions'],
  letter: ['letter', 'letters'],
  numeral: ['number', 'numbers'],
  sign: ['sign', 'signs'],
  card: ['dot card', 'dot cards'],
  pattern: ['pattern', 'patterns'],
  mixed: ['picture', 'pictures'],
};

const ATTRIBUTE_NOUNS: Readonly<Record<Attribute, string>> = {
  colour: 'colour',
  fill: 'pattern',
  form: 'shape',
  turn: 'direction',
  size: 'size',
  count: 'number',
  layout: 'layout',
};

const LOOKS: Readonly<Partial<Record<Attribute, Look>>> = {
  colour: 'colour',
  size: 'size',
  turn: 'direction',
  fill: 'pattern',
  count: 'card',
};

export function lookOf({ boxes }: Printed): Look {
  const figures = boxes.flatMap((box) => box.figures);
  const changing = [...attributesChanging(figures)];
  const [only = 'form'] = changing;
  if (changing.length > 1) return 'mixed';
  const look = LOOKS[only];
  if (look) return look;
  const looks = new Set(figures.map(lookOfFigure));
  const [first = 'mixed'] = looks;
  return looks.size === 1 ? first : 'mixed';
}

function lookOfFigure(figure: Figure): Look {
  const form = formOf(figure);
  if (form === 'circle' && figure.colour !== undefined) return 'colour';
  if (form === 'dots') return 'card';
  if (isNumeral(form)) return 'numeral';
  if (isLetter(form)) return 'letter';
  if (isSign(form)) return 'sign';
  return isShape(form) ? 'shape' : 'mixed';
}

/** Such as "colour and shape", where figures differ in several ways; none where they differ in one. */
export function severalAttributes({ boxes }: Printed): string | undefined {
  const changing = [...attributesChanging(boxes.flatMap((box) => box.figures))];
  if (changing.length < 2) return undefined;
  return listOf(changing.map((attribute) => ATTRIBUTE_NOUNS[attribute]));
}

/** Such as "colour", "two colours". */
export function countedNoun(look: Look, count: number): string {
  const [one, several] = NOUNS[look];
  return count === 1 ? one : counted(count, one, several);
}

/** Such as "blue", "the heart", "the small b", "the card with four dots". */
export function itemName(figure: Figure, look: Look, { boxes }: Printed): string {
  const form = formOf(figure);
  switch (look) {
    case 'colour':
      return figure.colour === undefined ? 'ink' : colourName(figure.colour);
    case 'card':
      return `the card with ${counted(figure.count ?? 1, 'dot', 'dots')}`;
    case 'numeral':
      return `the ${form.slice('numeral-'.length)}`;
    case 'shape':
    case 'letter':
    case 'sign':
      return `the ${formName(form)}`;
    default:
      return `the ${nameAmong(
        boxes.flatMap((box) => box.figures),
        figure,
      )}`;
  }
}
