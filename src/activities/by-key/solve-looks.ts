// How a figure looks, attribute by attribute, and which attributes a key tells its entries apart by.
import {
  type Figure,
  fairlyDifferent,
  formOf,
  isOwnColoured,
  layoutOf,
  mirrorTurnDeg,
  symmetryTurnDeg,
} from '../../figures/index.ts';
import type { ColourName } from '../../palette/index.ts';
import type { Entry, Response } from './task.ts';

export const ATTRIBUTES = ['form', 'colour', 'size', 'turn', 'count', 'layout', 'fill'] as const;
export type Attribute = (typeof ATTRIBUTES)[number];

/** What an eye sees of one attribute: two figures that look alike in it give the same text. */
export function lookOf(figure: Figure, attribute: Attribute): string {
  switch (attribute) {
    case 'form':
      return formOf(figure);
    case 'colour':
      // Printed ink is as good as black.
      return figure.colour ?? 'black';
    case 'size':
      return String(figure.size ?? 1);
    case 'turn':
      return turnLook(figure);
    case 'count':
      return String(figure.count ?? 0);
    case 'layout':
      // One dot lies in the middle, whatever its layout is called.
      return formOf(figure) === 'dots' && figure.count !== 1 ? layoutOf(figure) : 'none';
    case 'fill':
      return figure.fill ?? 'solid';
  }
}

/** Turn and mirroring, less what the form's own symmetry hides. */
function turnLook(figure: Figure): string {
  const form = formOf(figure);
  const { turn = 0, mirrored = false } = figure;
  const unmirrored = mirrored ? mirrorTurnDeg(form) : 0;
  const least = symmetryTurnDeg(form);
  if (unmirrored === undefined) return `mirrored ${turn % least}`;
  return String((turn + unmirrored) % least);
}

export function looksEqual(
  one: Figure,
  other: Figure,
  attributes: readonly Attribute[] = ATTRIBUTES,
): boolean {
  return attributes.every((attribute) => lookOf(one, attribute) === lookOf(other, attribute));
}

/** The attributes in which not all of the figures look the same. */
export function differingAttributes(figures: readonly Figure[]): readonly Attribute[] {
  const [first] = figures;
  if (!first) return [];
  return ATTRIBUTES.filter((attribute) =>
    figures.some((figure) => !looksEqual(figure, first, [attribute])),
  );
}

/**
 * Every way to read the key: a set of attributes that tells all its entries apart. Smaller sets are what
 * a child may go by who looks at less than all that differs.
 */
export function readingsOf(key: readonly Entry[]): readonly (readonly Attribute[])[] {
  const figures = key.map((entry) => entry.figure);
  return subsetsOf(differingAttributes(figures)).filter((attributes) =>
    figures.every((figure, place) =>
      figures.every((other, index) => index === place || !looksEqual(figure, other, attributes)),
    ),
  );
}

function subsetsOf<T>([first, ...rest]: readonly T[]): readonly (readonly T[])[] {
  if (first === undefined) return [[]];
  return subsetsOf(rest).flatMap((subset) => [subset, [first, ...subset]]);
}

/** Whether a figure already shows what a response would make of it: its colour, its sign, its texture. */
export function showsResponse(figure: Figure, response: Response): boolean {
  switch (response.kind) {
    case 'sign':
      return formOf(figure) === response.sign;
    case 'fill':
      return figure.fill === response.texture;
    default:
      return filledColour(figure) === response.colour;
  }
}

/** The one colour that a figure shows already: printed ink is as good as black, but an outline of ink is still empty. */
export function filledColour(figure: Figure): ColourName | undefined {
  const { colour, fill = 'solid' } = figure;
  const isInked = fill === 'solid' && !isOwnColoured(figure);
  return colour ?? (isInked ? 'black' : undefined);
}

/** Whether two figures are so alike to the eye that one may be taken for the other. */
export function mayBeTakenFor(one: Figure, other: Figure): boolean {
  return !fairlyDifferent(one, other);
}
