// The outline of any figure in a cell of side 1: form, size, turn and mirroring applied.
import {
  compose,
  type Path,
  type PathStep,
  scaleBy,
  type Transform,
  transformPath,
  turnBy,
} from '../base/index.ts';
import { dotsOutline } from './dots.ts';
import { type Figure, formOf, layoutOf } from './figure.ts';
import { type FormId, isShape, isSign } from './form-names.ts';
import { letterOutline } from './letter-outlines.ts';
import { shapeOutline } from './shape-outlines.ts';
import { SIGN_WIDTH_SHARE, signPath } from './sign-lines.ts';

export interface Outline {
  /** In a cell of side 1 about (0, 0): all that is inked lies within −0.5 to 0.5 both ways. */
  readonly path: Path;
  readonly rule: 'nonzero' | 'evenodd';
  /** The path is a line to be drawn with round ends, this wide in cell sides; absent: an area. */
  readonly drawn?: { readonly widthShare: number };
}

const uprights = new Map<string, Outline>();

/** The outline of a figure; a figure without a form is a circle. */
export function outlineOf(figure: Figure): Outline {
  const { size = 1, turn = 0, mirrored = false } = figure;
  const upright = uprightOutline(figure);
  const mirror: Transform = scaleBy(mirrored ? -size : size, size);
  const path = transformPath(upright.path, compose(turnBy(turn), mirror)).map(roundedStep);
  return upright.drawn
    ? { ...upright, path, drawn: { widthShare: upright.drawn.widthShare * size } }
    : { ...upright, path };
}

function uprightOutline(figure: Figure): Outline {
  const form = formOf(figure);
  const key = form === 'dots' ? `dots ${figure.count} ${layoutOf(figure)}` : form;
  const outline = uprights.get(key) ?? makeOutline(form, figure);
  uprights.set(key, outline);
  return outline;
}

function makeOutline(form: FormId, figure: Figure): Outline {
  if (form === 'dots') {
    return { path: dotsOutline(figure.count ?? 1, layoutOf(figure)), rule: 'nonzero' };
  }
  if (isShape(form)) return { path: shapeOutline(form), rule: 'nonzero' };
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
