// What a figure's colour and fill come to on white paper.
import type { ColourName } from '../palette/index.ts';
import { type Figure, type Fill, formOf } from './figure.ts';
import { isPicture } from './form-names.ts';

export interface Paint {
  readonly colour: ColourName;
  readonly fill: Fill;
}

/** Ink counts as black; a white figure shows its outline alone. */
export function paintOf({ colour = 'black', fill = 'solid' }: Figure): Paint {
  if (colour !== 'white') return { colour, fill };
  return { colour: 'black', fill: fill === 'solid' ? 'outline' : fill };
}

/** Whether a figure is a picture in its own colours; one with a colour or a fill is its silhouette. */
export function isOwnColoured(figure: Figure): boolean {
  return isPicture(formOf(figure)) && figure.colour === undefined && figure.fill === undefined;
}
