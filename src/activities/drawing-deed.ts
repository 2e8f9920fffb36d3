// What drawing a figure oneself asks of the hand.
import {
  type Figure,
  formOf,
  isSign,
  paintOf,
  type Sign,
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

/** A texture is filled in, a sign drawn; forms without a movement of their own are as hard as the hardest. */
export function drawingDeed(figure: Figure): Deed {
  const form = formOf(figure);
  const { fill } = paintOf(figure);
  if (isTexture(fill)) return fill;
  if (isSign(form)) return form satisfies Sign;
  return form === 'dots' ? 'sign-dot' : (DRAWN[form] ?? 'sign-triangle');
}

/** Whether figures differ in nothing but what fills one outline, which can be printed to be filled in. */
export function areTextures(figures: readonly Figure[]): boolean {
  return figures.every(({ fill = 'solid' }) => isTexture(fill));
}

function isTexture(fill: string): fill is Texture {
  return TEXTURES.some((texture) => texture === fill);
}
