// What makes a copying task hard, measured from the printed model and boxes alone.
import {
  type Figure,
  type FormId,
  formOf,
  isShape,
  isSign,
  type Sign,
  stanceOf,
} from '../../figures/index.ts';
import type { Features } from '../features.ts';
import { distinctFigures, likenessFeatures } from '../figure-features.ts';
import { type Deed, handLevel, hardestHand } from '../hand.ts';
import { classOf } from './classes.ts';
import { neighboursOf, placesOf } from './places.ts';
import { type Reading, readingOf } from './reading.ts';
import type { CopyResponse, Model, Printed } from './task.ts';

/** A line from point to point must also stop where it should. */
const DEEDS: Readonly<Record<Exclude<CopyResponse, 'draw'>, Deed>> = {
  sticker: 'sticker',
  'colour-in': 'colour-in',
  'draw-line': 'join',
};

const ASYMMETRY = { mirror: 0, turn: 0.5, none: 1 } as const;

export function features(printed: Printed): Features {
  const { model, boxes } = printed;
  const elements = model.cells.flatMap((cell) => cell ?? []);
  const kinds = distinctFigures(elements);
  const slanted = elements.filter((figure) => stanceOf(figure).turn % 90 !== 0);
  const begun = boxes.filter(({ cells }) => cells.some((cell) => cell !== null));
  return {
    elements: Math.log(elements.length),
    places: Math.log(model.cells.length),
    kinds: Math.log(kinds.length),
    repeats: Math.log(boxes.length),
    ...likenessFeatures(kinds),
    oblique: slanted.length / elements.length,
    begun: begun.length / boxes.length,
    asymmetry: ASYMMETRY[classOf(model).symmetry],
    apart: Math.log(piecesOf(model)),
    rule: 1,
    hand: handOf(readingOf(printed), kinds),
  };
}

function handOf({ content, response }: Reading, kinds: readonly Figure[]): number {
  if (response !== 'draw') return handLevel(DEEDS[response]);
  return content === 'dots' ? handLevel('sign-dot') : hardestHand(kinds.map(drawnAs));
}

/** Shapes by the sign that is drawn like them; those with points or bows as the hardest sign. */
const DRAWN_AS: Readonly<Partial<Record<FormId, Sign>>> = {
  circle: 'sign-ring',
  cross: 'sign-plus',
  square: 'sign-square',
  'half-circle': 'sign-square',
};

/** Letters and numerals have the strokes of a square, no source. */
function drawnAs(figure: Figure): Deed {
  const form = formOf(figure);
  if (isSign(form)) return form;
  return isShape(form) ? (DRAWN_AS[form] ?? 'sign-triangle') : 'sign-square';
}

/** Into how many pieces the elements fall: cells hang together at a side or corner, lines at a point. */
function piecesOf(model: Model): number {
  const { rows, columns, cells } = model;
  const places = placesOf(cells.length === rows * columns ? 'grid' : 'lattice', model);
  const neighbours = neighboursOf(places, columns);
  const left = new Set(cells.flatMap((cell, place) => (cell === null ? [] : [place])));
  let pieces = 0;
  for (const first of left) {
    pieces += 1;
    left.delete(first);
    const open = [first];
    for (let place = open.pop(); place !== undefined; place = open.pop()) {
      for (const next of neighbours[place] ?? []) if (left.delete(next)) open.push(next);
    }
  }
  return pieces;
}
