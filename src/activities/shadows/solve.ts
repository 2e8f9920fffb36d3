// Finds every way to give each model its shadow, from the printed page alone.
import { type Told, told } from '../../base/index.ts';
import {
  type Figure,
  fairlyDifferent,
  formOf,
  isOwnColoured,
  isPicture,
  paintOf,
  sameFigure,
  turnedOutlineShare,
} from '../../figures/index.ts';
import type { Findings } from '../activity.ts';
import type { Answer, Printed } from './task.ts';

/**
 * Two pictures whose outlines differ in less than this share, turned or mirrored ones included, can be taken
 * for each other once nothing but the outline is left; by eye.
 */
const PICTURE_SHADOW_SHARE = 0.2;
/** More answers than these say no more than that the page is ambiguous. */
const MOST_ANSWERS = 20;

/** Every one-to-one choice among the shadows that have, or can be taken to have, the outline of each model. */
export function solve({ models, shadows }: Printed): Findings<Answer> {
  const isDirectionMeant = areOfOneForm([...models, ...shadows]);
  const fitting = models.map((model) => fittingPlaces(model, shadows, isDirectionMeant));
  const hasAll = fitting.every(({ exact }) => exact.length > 0);
  const answers = hasAll ? assignments(fitting.map(({ exact, near }) => [...exact, ...near])) : [];
  const alone = fitting.flatMap(({ exact }, index) =>
    exact.length === 0 ? [told('shadows', 'fault.no-shadow', { model: index + 1 })] : [],
  );
  return {
    answers,
    faults: [...alone, ...inkFaults(models, shadows), ...sizeFaults(models, shadows)],
  };
}

interface Fitting {
  /** Shadows with the very outline of the model. */
  readonly exact: readonly number[];
  /** Shadows that can be taken for it: too near in outline, or its own but for how they lie. */
  readonly near: readonly number[];
}

function fittingPlaces(
  model: Figure,
  shadows: readonly Figure[],
  isDirectionMeant: boolean,
): Fitting {
  const outline = shadowOf(model);
  const places = shadows.map((_, place) => place);
  const exact = places.filter((place) => sameFigure(outline, shadowOf(shadows[place])));
  const near = places.filter((place) => {
    const shadow = shadowOf(shadows[place]);
    const isTurned = !isDirectionMeant && sameFigure(upright(outline), upright(shadow));
    return !exact.includes(place) && (isTurned || areNear(outline, shadow));
  });
  return { exact, near };
}

/** The outline alone, at one size, filled with ink. */
function shadowOf({ form, turn, mirrored, count, layout, dotSize }: Figure = {}): Figure {
  return { form, turn, mirrored, count, layout, dotSize, fill: 'solid' };
}

function upright(figure: Figure): Figure {
  return { ...figure, turn: 0, mirrored: false };
}

function areNear(one: Figure, other: Figure): boolean {
  if (!fairlyDifferent(one, other)) return true;
  const arePictures = isPicture(formOf(one)) && isPicture(formOf(other));
  const isOneForm = formOf(one) === formOf(other);
  return arePictures && !isOneForm && turnedOutlineShare(one, other) < PICTURE_SHADOW_SHARE;
}

/** Where all figures are of one form, only direction can be meant; else a turned one is its shadow to many a child. */
function areOfOneForm(figures: readonly Figure[]): boolean {
  return figures.every((figure) => formOf(figure) === formOf(figures[0] ?? {}));
}

/** Every way to take one place of each list, no place twice. */
function assignments(lists: readonly (readonly number[])[]): readonly Answer[] {
  let begun: readonly Answer[] = [[]];
  for (const places of lists) {
    begun = begun
      .flatMap((taken) =>
        places.filter((place) => !taken.includes(place)).map((place) => [...taken, place]),
      )
      .slice(0, MOST_ANSWERS);
  }
  return begun;
}

function inkFaults(models: readonly Figure[], shadows: readonly Figure[]): readonly Told[] {
  return [
    ...(shadows.length < 2 ? [told('shadows', 'fault.one-shadow')] : []),
    ...(shadows.every(isInk) ? [] : [told('shadows', 'fault.not-ink')]),
    ...(models.some(isInk) ? [told('shadows', 'fault.model-ink')] : []),
  ];
}

function isInk(figure: Figure): boolean {
  const { colour, fill } = paintOf(figure);
  return !isOwnColoured(figure) && colour === 'black' && fill === 'solid';
}

/** Where some shadows are as large as the models and others are not, size would seem to tell. */
function sizeFaults(models: readonly Figure[], shadows: readonly Figure[]): readonly Told[] {
  const [size = 1, ...others] = models.map((model) => model.size ?? 1);
  const asLarge = shadows.filter((shadow) => (shadow.size ?? 1) === size).length;
  return [
    ...(others.every((other) => other === size) ? [] : [told('shadows', 'fault.model-sizes')]),
    ...(asLarge === 0 || asLarge === shadows.length ? [] : [told('shadows', 'fault.shadow-sizes')]),
  ];
}
