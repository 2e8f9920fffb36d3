// What makes a task of by-key hard, measured from the printed key and items alone.
import type { Features } from '../features.ts';
import { attributesNeeded, idleAttributes, likenessFeatures } from '../figure-features.ts';
import { type Deed, hardestHand } from '../hand.ts';
import type { Printed, Response } from './task.ts';

export function features({ key, items }: Printed): Features {
  const figures = key.map((entry) => entry.figure);
  const compared = Math.log(items.length);
  const conjunction = attributesNeeded(figures) - 1;
  const deeds = key.map(({ response }) => deedOf(response));
  return {
    compared,
    keySize: Math.log(key.length),
    ...likenessFeatures(figures),
    conjunction,
    conjunctionCompared: conjunction * compared,
    idle: idleAttributes(items, figures),
    hand: hardestHand(deeds),
    movements: Math.log(new Set(deeds).size),
  };
}

/** Coloured responses are one movement with another pencil. */
function deedOf(response: Response): Deed {
  if (response.kind === 'sign') return response.sign;
  return response.kind === 'fill' ? response.texture : response.kind;
}
