// What makes a task of turned-shapes hard, measured from the printed model and choices alone.
import {
  areToldByInsides,
  type Figure,
  type FormId,
  floorOf,
  formOf,
  INSIDE_FLOOR,
  insideShare,
  mirrorTurnDeg,
  stanceOf,
  symmetryTurnDeg,
  turnedOutlineShare,
} from '../../figures/index.ts';
import type { Features } from '../features.ts';
import { meanOf, mixture } from '../figure-features.ts';
import { type Deed, handLevel } from '../hand.ts';
import { isSameForm } from './solve-forms.ts';
import type { Printed, Response } from './task.ts';

const DEEDS: Readonly<Record<Response, Deed>> = {
  point: 'point',
  ring: 'ring',
  cross: 'sign-oblique-cross',
};

/** How like the model its mirror image is, turned; provisional. */
const MIRROR_LIKENESS = 0.9;

export function features({ model, choices, response = 'point' }: Printed): Features {
  const right = choices.filter((figure) => isSameForm(model, figure));
  const wrong = choices.filter((figure) => !isSameForm(model, figure));
  const mirrored = wrong.filter((figure) => isMirrorImage(model, figure));
  const lures = wrong.filter((figure) => isLure(model, figure, right));
  const all = [model, ...choices];
  return {
    compared: Math.log(all.length),
    answers: Math.log(Math.max(1, right.length)),
    nearMisses: Math.log(1 + mirrored.length + lures.length),
    likeness: meanOf(wrong.map((figure) => likenessOf(model, figure))),
    mixed: mixture(wrong.map(bareOf)),
    turned: meanOf(right.map((figure) => turnBetween(model, figure) / 90)),
    resized: meanOf(
      right.map((figure) => Math.abs(Math.log((figure.size ?? 1) / (model.size ?? 1)))),
    ),
    oblique: meanOf(right.map((figure) => (stanceOf(figure).turn % 90 === 0 ? 0 : 1))),
    mirrored: meanOf(wrong.map((figure) => (mirrored.includes(figure) ? 1 : 0))),
    idle: new Set(all.map(({ colour }) => colour)).size > 1 ? 1 : 0,
    hand: handLevel(DEEDS[response]),
  };
}

function isMirrorImage(model: Figure, figure: Figure): boolean {
  return formOf(model) === formOf(figure) && mirrorTurnDeg(formOf(model)) === undefined;
}

/** A wrong one in the colour of the model, where none of the right ones has it. */
function isLure(model: Figure, figure: Figure, right: readonly Figure[]): boolean {
  const hasColour = ({ colour }: Figure) => colour === model.colour;
  return hasColour(figure) && !right.some(hasColour);
}

/** The form alone: upright, in ink and at full size. */
function bareOf(figure: Figure): { readonly form: FormId } {
  return { form: formOf(figure) };
}

/** As the likeness of two figures, with the outline that they differ in at the best of all quarter turns, or the insides. */
function likenessOf(model: Figure, figure: Figure): number {
  const [one, other] = [bareOf(model), bareOf(figure)];
  if (one.form === other.form) return MIRROR_LIKENESS;
  const distance = areToldByInsides(one.form, other.form)
    ? insideShare(one.form, other.form) / INSIDE_FLOOR
    : turnedOutlineShare(one, other) / floorOf(one.form, other.form);
  return Math.round(100 * Math.exp(-distance)) / 100;
}

/** The least turn in degrees that brings one to the other, 0 to 180. */
function turnBetween(model: Figure, figure: Figure): number {
  const period = symmetryTurnDeg(formOf(model));
  const apart = Math.abs(stanceOf(model).turn - stanceOf(figure).turn) % period;
  return Math.min(apart, period - apart);
}
