// What the figures of a task are called: by what a child looks at, not by all that they are.
import { type Figure, formOf, isLetter, isNumeral, isShape, isSign } from '../../figures/index.ts';
import type { Say } from '../../languages/index.ts';
import type { Attribute } from '../figure-comparison.ts';
import { attributesChanging } from '../figure-features.ts';
import type { Wording } from '../in-words.ts';
import type { MESSAGES } from './messages-en.ts';
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

/** In what the figures differ. */
export function changingAttributes({ boxes }: Printed): readonly Attribute[] {
  return [...attributesChanging(boxes.flatMap((box) => box.figures))];
}

/** Such as "blue", "the heart", "the small b", "the card with four dots". */
export function itemName(
  say: Say<typeof MESSAGES>,
  wording: Wording,
  figure: Figure,
  printed: Printed,
): string {
  const form = formOf(figure);
  switch (lookOf(printed)) {
    case 'colour':
      return figure.colour === undefined ? say('item.ink') : wording.colour(figure.colour);
    case 'card': {
      const count = figure.count ?? 1;
      return say('item.card', { count, number: wording.number(count) });
    }
    case 'numeral':
      return say('item.numeral', { digit: form.slice('numeral-'.length) });
    case 'shape':
    case 'letter':
    case 'sign':
      return wording.form(form, 'the');
    default:
      return wording.among(
        printed.boxes.flatMap((box) => box.figures),
        figure,
        'the',
      );
  }
}
