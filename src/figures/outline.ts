// The outline of any figure in a cell of side 1: form, size, turn and mirroring applied.
import {
  compose,
  type PathStep,
  scaleBy,
  type Transform,
  transformPath,
  turnBy,
} from '../base/index.ts';
import { dotsOutline } from './dots.ts';
import { type Figure, formOf, layoutOf } from './figure.ts';
import { type FormId, isPicture, isShape, isSign } from './form-names.ts';
import { letterOutline } from './letter-outlines.ts';
import type { Outline } from './outline-data.ts';
import { type PicturePart, pictureOutline, pictureParts } from './pictures.ts';
import { shapeOutline } from './shape-outlines.ts';
import { SIGN_WIDTH_SHARE, signPath } from './sign-lines.ts';

export type { Outline } from './outline-data.ts';

const uprights = new Map<string, Outline>();

/** The outline of a figure; a figure without a form is a circle. */
export function outlineOf(figure: Figure): Outline {
  const { size = 1 } = figure;
  const upright = uprightOutline(figure);
  const path = transformPath(upright.path, placeOf(figure)).map(roundedStep);
  return upright.drawn
    ? { ...upright, path, drawn: { widthShare: upright.drawn.widthShare * size } }
    : { ...upright, path };
}

/** The parts of a picture in its own colours, placed as `outlineOf` places its outline; else none. */
export function partsOf(figure: Figure): readonly PicturePart[] {
  const form = formOf(figure);
  if (!isPicture(form)) return [];
  return pictureParts(form).map((part) => ({
    ...part,
    path: transformPath(part.path, placeOf(figure)).map(roundedStep),
  }));
}

function placeOf({ size = 1, turn = 0, mirrored = false }: Figure): Transform {
  return compose(turnBy(turn), scaleBy(mirrored ? -size : size, size));
}

function uprightOutline(figure: Figure): Outline {
  const form = formOf(figure);
  const key =
    form === 'dots' ? `dots ${figure.count} ${layoutOf(figure)} ${figure.dotSize ?? 1}` : form;
  const outline = uprights.get(key) ?? makeOutline(form, figure);
  uprights.set(key, outline);
  return outline;
}

function makeOutline(form: FormId, figure: Figure): Outline {
  if (form === 'dots') {
    const { count = 1, dotSize = 1 } = figure;
    return { path: dotsOutline(count, layoutOf(figure), dotSize), rule: 'nonzero' };
  }
  if (isShape(form)) return { path: shapeOutline(form), rule: 'nonzero' };
  if (isPicture(form)) return { path: pictureOutline(form), rule: 'nonzero' };
  if (!isSign(form)) return { path: letterOutline(form), rule: 'nonzero' };
  const { path, filled } = signPath(form);
  return filled
    ? { path, rule: 'nonzero' }
    : { path, rule: 'nonzero', drawn: { widthShare: SIGN_WIDTH_SHARE } };
}

/** To a hundred-thousandth of the cell, since trigonometry differs in the last digit between engines. */
function roundedStep(step: PathStep): PathStep {
  if (step[0] === 'Z') return step;
  if (step[0] === 'C') {
    const [, x1, y1, x2, y2, x3, y3] = step;
    return ['C', round(x1), round(y1), round(x2), round(y2), round(x3), round(y3)];
  }
  return [step[0], round(step[1]), round(step[2])];
}

/** Adding 0 turns −0 into 0. */
function round(share: number): number {
  return Math.round(share * 100_000) / 100_000 + 0;
}
