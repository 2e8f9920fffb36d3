// What a figure could be instead: values that print, that the activity's schema takes and that look different.
import type { Language } from '../activities/index.ts';
import {
  attributesOf,
  CONTENT_IDS,
  colourName,
  DOT_LAYOUTS,
  FILLS,
  type Figure,
  type FormId,
  figureSchema,
  fillName,
  formName,
  formOf,
  formsOf,
  layoutOf,
  MOST_DOTS,
  sameFigure,
  withPictures,
} from '../figures/index.ts';
import { coloursOf } from '../palette/index.ts';
import { type Ground, languageOf } from './ground.ts';
import { placesIn, withValue } from './places.ts';
import { EDITING_WORDS } from './words.ts';

export const EDITABLE = [
  'colour',
  'form',
  'size',
  'turn',
  'mirrored',
  'count',
  'layout',
  'fill',
] as const;
export type Editable = (typeof EDITABLE)[number];

/** One thing that a figure can become. */
export interface Offer {
  readonly label: string;
  readonly figure: Figure;
  readonly isNow: boolean;
}

export interface OfferGroup {
  readonly attribute: Editable;
  readonly label: string;
  readonly offers: readonly Offer[];
}

/** Sizes offered besides those on the page; shares of the full size, each about a third bigger than the last. */
const SIZES = [0.4, 0.55, 0.75, 1];
const EIGHTH_DEG = 45;

/** All that the figure at a place can become, attribute by attribute; nothing where nothing stands there. */
export function offersAt(ground: Ground, printed: unknown, place: number): readonly OfferGroup[] {
  const { path, figure } = placesIn(printed)[place] ?? {};
  if (!path || !figure) return [];
  const fits = (other: Figure) =>
    figureSchema.safeParse(other).success &&
    ground.activity.printed.safeParse(withValue(printed, path, other)).success;
  const language = languageOf(ground);
  const words = EDITING_WORDS[language];
  return EDITABLE.flatMap((attribute) => {
    const offers = figuresFor(ground, printed, figure, attribute)
      .map((other) => ({ other, isNow: sameFigure(other, figure) }))
      .filter(({ other, isNow }) => isNow || fits(other))
      .map(({ other, isNow }) => ({
        label: labelOf(other, attribute, language),
        figure: isNow ? figure : other,
        isNow,
      }));
    const group = { attribute, label: words.attribute(attribute), offers };
    return offers.some(({ isNow }) => !isNow) ? [group] : [];
  });
}

/** The figures that differ from it in the attribute alone, itself among them. */
export function figuresFor(
  ground: Ground,
  printed: unknown,
  figure: Figure,
  attribute: Editable,
): readonly Figure[] {
  const all = placesIn(printed).flatMap((place) => place.figure ?? []);
  const isDots = formOf(figure) === 'dots';
  switch (attribute) {
    case 'colour': {
      const isInk = all.some(({ colour }) => colour === undefined);
      const { colour: _colour, ...bare } = figure;
      return [
        ...coloursOf(ground.style).map((colour) => ({ ...figure, colour })),
        ...(isInk ? [bare] : []),
      ];
    }
    case 'form':
      return isDots ? [] : formsFor(ground, all).map((form) => withForm(figure, form));
    case 'size':
      return sizesFor(all).map((size) => withoutUsual({ ...figure, size }, 'size', 1));
    case 'turn':
      return Array.from({ length: 360 / EIGHTH_DEG }, (_, eighth) =>
        withoutUsual({ ...figure, turn: eighth * EIGHTH_DEG }, 'turn', 0),
      ).filter(isFirstLook);
    case 'mirrored':
      return [false, true]
        .map((mirrored) => withoutUsual({ ...figure, mirrored }, 'mirrored', false))
        .filter(isFirstLook);
    case 'count':
      if (!isDots) return [];
      return Array.from({ length: MOST_DOTS }, (_, dots) => ({ ...figure, count: dots + 1 }));
    case 'layout':
      return isDots ? DOT_LAYOUTS.map((layout) => ({ ...figure, layout })) : [];
    case 'fill':
      return FILLS.map((fill) => withoutUsual({ ...figure, fill }, 'fill', 'solid'));
  }
}

/** Attributes that this task is about: those of its content, and those in which its figures differ. */
export function attributesIn({ values }: Ground, printed: unknown): readonly Editable[] {
  const content = CONTENT_IDS.find((id) => id === values.content);
  const own: readonly string[] = content ? attributesOf(content) : [];
  const all = placesIn(printed).flatMap(({ figure }) => figure ?? []);
  return EDITABLE.filter(
    (name) => own.includes(name) || new Set(all.map((figure) => figure[name])).size > 1,
  );
}

function formsFor({ values, style }: Ground, all: readonly Figure[]): readonly FormId[] {
  const content = CONTENT_IDS.find((id) => id === values.content);
  const shown = all.map(formOf).filter((form) => form !== 'dots');
  return [
    ...new Set([
      ...shown,
      ...(content ? withPictures(style.pictures, () => formsOf(content)) : []),
    ]),
  ].filter((form) => form !== 'dots');
}

/** A figure that states no form is a circle; it states none afterwards either where it becomes one. */
function withForm(figure: Figure, form: FormId): Figure {
  if (formOf(figure) === form) return figure;
  return { ...figure, form };
}

function sizesFor(all: readonly Figure[]): readonly number[] {
  const shown = all.map(({ size = 1 }) => size);
  const apart = SIZES.filter((size) => shown.every((other) => Math.abs(other - size) > 0.05));
  return [...new Set([...shown, ...apart])].sort((one, other) => one - other);
}

/** What is usual is stated only where it was stated. */
function withoutUsual<K extends keyof Figure>(figure: Figure, name: K, usual: Figure[K]): Figure {
  if (figure[name] !== usual) return figure;
  const { [name]: _usual, ...rest } = figure;
  return rest;
}

function isFirstLook(figure: Figure, index: number, all: readonly Figure[]): boolean {
  return !all.slice(0, index).some((other) => sameFigure(figure, other));
}

function labelOf(figure: Figure, attribute: Editable, language: Language): string {
  const words = EDITING_WORDS[language];
  switch (attribute) {
    case 'colour':
      return figure.colour ? colourName(figure.colour, language) : words.ink;
    case 'form':
      return formName(formOf(figure), language);
    case 'size':
      return words.size(figure.size ?? 1);
    case 'turn':
      return words.turn(figure.turn ?? 0);
    case 'mirrored':
      return words.mirrored(figure.mirrored ?? false);
    case 'count':
      return words.count(figure.count ?? 1);
    case 'layout':
      return words.layout(layoutOf(figure));
    case 'fill':
      return fillName(figure.fill ?? 'solid', language);
  }
}
