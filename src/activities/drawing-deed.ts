// What drawing a figure oneself asks of the hand.
import {
  type Figure,
  type FormId,
  formOf,
  isSign,
  paintOf,
  TEXTURES,
  type Texture,
} from '../figures/index.ts';
import type { Deed } from './hand.ts';

/** Outlines that are drawn like a sign. */
const DRAWN: Readonly<Record<string, Deed>> = {
  circle: 'sign-ring',
  oval: 'sign-ring',
  cross: 'sign-plus',
  square: 'sign-square',
  oblong: 'sign-square',
};

/** A texture is filled in; all else is drawn as its form is. */
export function drawingDeed(figure: Figure): Deed {
  const { fill } = paintOf(figure);
  return isTexture(fill) ? fill : formDeed(formOf(figure));
}

/** Forms without a movement of their own are as hard to draw as the hardest. */
export function formDeed(form: FormId): Deed {
  if (isSign(form)) return form;
  return form === 'dots' ? 'sign-dot' : (DRAWN[form] ?? 'sign-triangle');
}

/** Whether figures differ in nothing but what fills one outline, which can be printed to be filled in. */
export function areTextures(figures: readonly Figure[]): boolean {
  return figures.every(({ fill = 'solid' }) => isTexture(fill));
}

function isTexture(fill: string): fill is Texture {
  return TEXTURES.some((texture) => texture === fill);
}
