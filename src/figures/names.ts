// What a figure is called in plain words, for readers who cannot see it and for the adult.
import type { ColourName } from '../palette/index.ts';
import { type Figure, type Fill, formOf, layoutOf } from './figure.ts';
import type { FigureWords } from './figure-words.ts';
import type { FormId } from './form-names.ts';
import { stanceOf, symmetryTurnDeg } from './symmetry.ts';
import { ENGLISH } from './words-en.ts';

const WORDS = { en: ENGLISH } as const satisfies Readonly<Record<string, FigureWords>>;

/** The languages that figures are named in. */
export type FigureLanguage = keyof typeof WORDS;

/**
 * Such as "red circle", "triangle pointing left", "four dots as on a die", "small b". Size and turn are
 * said where the figure states them, whatever they are; an arrow's direction always.
 */
export function figureName(figure: Figure, language: FigureLanguage = 'en'): string {
  const form = formOf(figure);
  const { turn, mirrored } = stanceOf(figure);
  const period = symmetryTurnDeg(form);
  const isStated = figure.turn !== undefined || form === 'arrow';
  const dots = form === 'dots' ? { count: figure.count ?? 1, layout: layoutOf(figure) } : undefined;
  return WORDS[language].figure({
    form,
    colour: figure.colour,
    size: figure.size,
    fill: figure.fill,
    dots,
    mirrored,
    turn: (turn > 0 && period > 1) || (isStated && period > 90) ? turn : undefined,
  });
}

/** The name of a colour. */
export function colourName(colour: ColourName, language: FigureLanguage = 'en'): string {
  return WORDS[language].colour(colour);
}

/** The name of a form alone, such as "half circle", "capital B", "dots". */
export function formName(form: FormId, language: FigureLanguage = 'en'): string {
  return WORDS[language].form(form);
}

/** How a fill is spoken of after a noun, such as "with upright stripes", "in outline"; "solid". */
export function fillName(fill: Fill, language: FigureLanguage = 'en'): string {
  return WORDS[language].fill(fill);
}
