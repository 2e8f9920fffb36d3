// How a figure looks in one attribute, and which figures stand alone in one attribute or in several together.
import {
  categoryOf,
  type Figure,
  fairlyDifferent,
  formOf,
  isLetter,
  isNumeral,
  isOwnColoured,
  isShape,
  isSign,
  layoutOf,
  plainest,
  stanceOf,
} from '../../figures/index.ts';
import { mainColourOf, wayOf } from './solve-pictures.ts';

/** All that a child may go by, intended or not. */
export const TRAITS = [
  'colour',
  'fill',
  'form',
  'kind',
  'way',
  'turn',
  'size',
  'count',
  'layout',
  'dotSize',
] as const;
export type Trait = (typeof TRAITS)[number];

/** What an eye sees of one trait: two figures that look alike in it give the same text. */
export function lookOf(figure: Figure, trait: Trait): string {
  const form = formOf(figure);
  switch (trait) {
    case 'colour':
      return isOwnColoured(figure) ? mainColourOf(figure) : (figure.colour ?? 'black');
    case 'fill':
      return isOwnColoured(figure) ? 'own' : (figure.fill ?? 'solid');
    case 'form':
      return formOf(plainest(figure));
    case 'kind':
      return kindOf(figure);
    case 'way':
      return wayOf(figure);
    case 'turn': {
      const { turn, mirrored } = stanceOf(plainest(figure));
      return `${turn} ${mirrored}`;
    }
    case 'size':
      return String(figure.size ?? 1);
    case 'count':
      return String(figure.count ?? 0);
    case 'layout':
      // One dot lies in the middle, whatever its layout is called.
      return form === 'dots' && figure.count !== 1 ? layoutOf(figure) : 'none';
    case 'dotSize':
      return String(figure.dotSize ?? 1);
  }
}

function kindOf(figure: Figure): string {
  const form = formOf(figure);
  if (isShape(form)) return 'shape';
  if (isSign(form)) return 'sign';
  if (isNumeral(form)) return 'numeral';
  if (isLetter(form)) return form.startsWith('capital-') ? 'capital' : 'letter';
  return categoryOf(form) ?? form;
}

/** The traits in which not all of the figures look the same. */
export function changingTraits(figures: readonly Figure[]): readonly Trait[] {
  return TRAITS.filter((trait) => new Set(figures.map((figure) => lookOf(figure, trait))).size > 1);
}

/**
 * Places of the figures that look like no other in the traits together. Where all do, the traits single out
 * none: a child sees that everything is different.
 */
export function aloneIn(figures: readonly Figure[], traits: readonly Trait[]): readonly number[] {
  const looks = figures.map((figure) => traits.map((trait) => lookOf(figure, trait)).join('|'));
  const alone = looks.flatMap((look, place) =>
    looks.indexOf(look) === looks.lastIndexOf(look) ? [place] : [],
  );
  return alone.length === figures.length ? [] : alone;
}

/** Of things in an order, the biggest and the smallest stand out, even where all are different. */
export function endsOf(figures: readonly Figure[], trait: 'size' | 'count'): readonly number[] {
  const values = figures.map((figure) => Number(lookOf(figure, trait)));
  return [Math.max(...values), Math.min(...values)].flatMap((end) =>
    values.filter((value) => value === end).length === 1 ? [values.indexOf(end)] : [],
  );
}

/** The fields of a figure that make a trait; none for what follows from the form. */
const FIELDS: Readonly<Partial<Record<Trait, readonly (keyof Figure)[]>>> = {
  colour: ['colour'],
  fill: ['fill'],
  form: ['form', 'count', 'layout', 'dotSize', 'turn', 'mirrored'],
  turn: ['form', 'turn', 'mirrored'],
  size: ['size'],
  count: ['count', 'layout', 'dotSize'],
  layout: ['layout', 'count', 'dotSize'],
};

/** Whether two figures that differ in a trait can fairly be told apart by that trait alone. */
export function isFairIn(one: Figure, other: Figure, trait: Trait): boolean {
  const fields = FIELDS[trait];
  if (!fields || lookOf(one, trait) === lookOf(other, trait)) return true;
  if (trait === 'colour' && isOwnColoured(one) && isOwnColoured(other)) return true;
  const exchanged = Object.fromEntries(fields.map((field) => [field, other[field]]));
  return fairlyDifferent(one, { ...one, ...exchanged });
}
