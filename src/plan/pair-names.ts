// What two figures are called beside each other: by what sets them apart alone, such as red and orange, b and d.
import { WORDINGS } from '../activities/index.ts';
import {
  colourName,
  type Figure,
  figureName,
  fillName,
  formName,
  formOf,
  stanceOf,
} from '../figures/index.ts';
import type { Language } from '../languages/index.ts';

type Way = 'colour' | 'form' | 'count' | 'size' | 'fill' | 'stance';

/** The names of both; whole names where they differ in more than one way. */
export function pairNames(
  one: Figure,
  other: Figure,
  language: Language = 'en',
): readonly [string, string] {
  const [way, ...more] = waysOf(one, other);
  const named = (figure: Figure) =>
    way === undefined || more.length > 0
      ? figureName(figure, language)
      : nameBy(way, figure, figure === one ? other : one, language);
  return [named(one), named(other)];
}

function waysOf(one: Figure, other: Figure): readonly Way[] {
  const [stance, otherStance] = [stanceOf(one), stanceOf(other)];
  const differs: Readonly<Record<Way, boolean>> = {
    colour: one.colour !== other.colour,
    form: formOf(one) !== formOf(other),
    count: one.count !== other.count,
    size: one.size !== other.size,
    fill: one.fill !== other.fill,
    stance: stance.turn !== otherStance.turn || stance.mirrored !== otherStance.mirrored,
  };
  return (Object.keys(differs) as Way[]).filter((way) => differs[way]);
}

function nameBy(way: Way, figure: Figure, other: Figure, language: Language): string {
  switch (way) {
    case 'colour':
      return figure.colour === undefined
        ? figureName(figure, language)
        : colourName(figure.colour, language);
    case 'form':
      return formName(formOf(figure), language);
    case 'count':
      return WORDINGS[language].number(figure.count ?? 1);
    case 'size':
      return (figure.size ?? 1) < (other.size ?? 1) ? 'smaller' : 'bigger';
    case 'fill':
      return fillName(figure.fill ?? 'solid', language);
    case 'stance': {
      const { colour: _colour, size: _size, ...rest } = figure;
      return figureName(rest, language);
    }
  }
}
