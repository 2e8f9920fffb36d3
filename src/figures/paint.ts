// What a figure's colour and fill come to on white paper.
import type { ColourName } from '../palette/index.ts';
import type { Figure, Fill } from './figure.ts';

export interface Paint {
  readonly colour: ColourName;
  readonly fill: Fill;
}

/** Ink counts as black; a white figure shows its outline alone. */
export function paintOf({ colour = 'black', fill = 'solid' }: Figure): Paint {
  if (colour !== 'white') return { colour, fill };
  return { colour: 'black', fill: fill === 'solid' ? 'outline' : fill };
}
