// What makes a task of in-every-box hard, measured from the printed boxes alone.
import type { Figure } from '../../figures/index.ts';
import type { Features } from '../features.ts';
import { areAlike } from '../figure-comparison.ts';
import {
  attributesNeeded,
  distinctFigures,
  likenessFeatures,
  mixture,
} from '../figure-features.ts';
import { handLevel } from '../hand.ts';
import type { Printed } from './task.ts';

export function features({ boxes, layout, response = 'point' }: Printed): Features {
  const all = boxes.flatMap((box) => box.figures);
  const kinds = distinctFigures(all);
  const missing = kinds.map((kind) => missingFrom(kind, boxes));
  const answers = kinds.filter((_, place) => missing[place] === 0);
  const near = kinds.filter((_, place) => missing[place] === 1);
  const wrong = all.filter((figure) => !answers.some((answer) => areAlike(answer, figure)));
  const compared = Math.log(all.length);
  const conjunction = attributesNeeded(kinds) - 1;
  return {
    compared,
    answers: Math.log(Math.max(1, answers.length)),
    nearMisses: Math.log(1 + near.length),
    ...likenessFeatures(kinds),
    mixed: mixture(wrong),
    conjunction,
    conjunctionCompared: conjunction * compared,
    disorder: layout === 'loose' ? 1 : 0,
    rule: 1,
    hand: handLevel(response),
  };
}

/** From how many boxes a figure is missing. */
export function missingFrom(kind: Figure, boxes: Printed['boxes']): number {
  const isIn = ({ figures }: { readonly figures: readonly Figure[] }) =>
    figures.some((figure) => areAlike(figure, kind));
  return boxes.filter((box) => !isIn(box)).length;
}
