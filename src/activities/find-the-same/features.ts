// What makes a task of find-the-same hard, measured from the printed model and choices alone.
import type { Figure } from '../../figures/index.ts';
import type { Features } from '../features.ts';
import { type Attribute, compareFigures } from '../figure-comparison.ts';
import { mixture, pairFeatures } from '../figure-features.ts';
import { handLevel } from '../hand.ts';
import type { Printed } from './task.ts';

export function features({ model, choices, response = 'point' }: Printed): Features {
  const wrong = choices.filter((choice) => !compareFigures(model, choice).isAlike);
  const pairs = wrong.map((choice) => compareFigures(model, choice));
  const compared = Math.log(1 + choices.length);
  const differing = pairs.map((pair) => pair.differing);
  const conjunction = attributesNeeded(differing) - 1;
  return {
    compared,
    nearMisses: Math.log(1 + countNear(wrong, differing)),
    ...pairFeatures(pairs),
    mixed: mixture(wrong),
    conjunction,
    conjunctionCompared: conjunction * compared,
    hand: handLevel(response),
  };
}

/** Wrong ones that have all but one of several attributes right; where one alone is looked at, none. */
function countNear(wrong: readonly Figure[], differing: readonly ReadonlySet<Attribute>[]): number {
  const changing = new Set(differing.flatMap((attributes) => [...attributes]));
  if (changing.size < 2) return 0;
  return wrong.filter((_, index) => differing[index]?.size === 1).length;
}

/** How many attributes must be minded together so that each wrong one is seen to differ from the model. */
function attributesNeeded(differing: readonly ReadonlySet<Attribute>[]): number {
  const changing = [...new Set(differing.flatMap((attributes) => [...attributes]))];
  const sets = Array.from({ length: 2 ** changing.length }, (_, bits) =>
    changing.filter((_, index) => Math.floor(bits / 2 ** index) % 2 === 1),
  );
  const telling = sets.filter((set) =>
    differing.every((attributes) => set.some((attribute) => attributes.has(attribute))),
  );
  return Math.max(1, Math.min(...telling.map((set) => set.length)));
}
