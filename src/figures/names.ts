// What a figure is called in plain words, for readers who cannot see it and for the adult.
import type { Language } from '../languages/index.ts';
import type { ColourName } from '../palette/index.ts';
import type { ContentId } from './contents.ts';
import { type Figure, type Fill, formOf, layoutOf } from './figure.ts';
import type { FormId } from './form-names.ts';
import { stanceOf, symmetryTurnDeg } from './symmetry.ts';
import { FIGURE_WORDS, type FigureCase } from './words.ts';

/**
 * Such as "red circle", "triangle pointing left", "four dots as on a die", "small b"; with `the`, "the red circle".
 * Size and turn are said where the figure states them, whatever they are; an arrow's direction always.
 */
export function figureName(
  figure: Figure,
  language: Language = 'en',
  as: FigureCase = 'name',
): string {
  const form = formOf(figure);
  const { turn, mirrored } = stanceOf(figure);
  const period = symmetryTurnDeg(form);
  const isStated = figure.turn !== undefined || form === 'arrow';
  const dots = form === 'dots' ? { count: figure.count ?? 1, layout: layoutOf(figure) } : undefined;
  const said = {
    form,
    colour: figure.colour,
    size: figure.size,
    fill: figure.fill,
    dots,
    mirrored,
    turn: (turn > 0 && period > 1) || (isStated && period > 90) ? turn : undefined,
  };
  return FIGURE_WORDS[language].figure(said, as);
}

/** The name of a colour. */
export function colourName(colour: ColourName, language: Language = 'en'): string {
  return FIGURE_WORDS[language].colour(colour);
}

/** The name of a form alone, such as "half circle", "capital B", "dots"; with `the`, "the half circle". */
export function formName(form: FormId, language: Language = 'en', as: FigureCase = 'name'): string {
  return FIGURE_WORDS[language].form(form, as);
}

/** How a fill is spoken of after a noun, such as "with upright stripes", "in outline"; "solid". */
export function fillName(fill: Fill, language: Language = 'en'): string {
  return FIGURE_WORDS[language].fill(fill);
}

/** What a content is called, such as "colours", "capital letters", "shapes in colours". */
export function contentName(content: ContentId, language: Language = 'en'): string {
  return FIGURE_WORDS[language].content(content);
}
