// Finds every figure of a printed task that stands alone under some reading, and what makes the task unfit.
import { type Told, told } from '../../base/index.ts';
import type { Figure } from '../../figures/index.ts';
import type { Findings } from '../activity.ts';
import { aloneIn, changingTraits, endsOf, isFairIn, type Trait } from './solve-looks.ts';
import { breakersOf } from './solve-order.ts';
import { placeFaults } from './solve-place.ts';
import type { Answer, Printed } from './task.ts';

/**
 * A figure is an answer if it stands alone in some set of traits taken together, such as the only red one, the
 * only small circle, or the only one that has no twin; if it alone is the biggest or smallest, the most or
 * fewest; or if it alone breaks a pattern of the others.
 */
export function solve(printed: Printed): Findings<Answer> {
  const { figures } = printed;
  const traits = changingTraits(figures);
  const odd = new Set([
    ...subsetsOf(traits).flatMap((set) => [...aloneIn(figures, set), ...breakersOf(figures, set)]),
    ...(['size', 'count'] as const).flatMap((trait) =>
      traits.includes(trait) ? endsOf(figures, trait) : [],
    ),
  ]);
  const answers = [...odd].sort((one, other) => one - other).map((place) => ({ odd: place }));
  return { answers, faults: faultsOf(printed, traits) };
}

function faultsOf(printed: Printed, traits: readonly Trait[]): readonly Told[] {
  const { figures } = printed;
  if (figures.length < 3) return [told('odd-one-out', 'fault.few')];
  if (traits.length === 0) return [told('odd-one-out', 'fault.all-alike')];
  return [...likenessFaults(figures, traits), ...placeFaults(printed)];
}

function likenessFaults(figures: readonly Figure[], traits: readonly Trait[]): readonly Told[] {
  return figures.flatMap((one, place) =>
    figures.slice(place + 1).flatMap((other) => {
      const unfair = traits.find((trait) => !isFairIn(one, other, trait));
      return unfair === undefined
        ? []
        : [
            told('odd-one-out', 'fault.alike', {
              ...{ one: { figure: one }, other: { figure: other } },
              trait: unfair,
            }),
          ];
    }),
  );
}

/** Every set of traits but the empty one. */
function subsetsOf<T>([first, ...rest]: readonly T[]): readonly (readonly T[])[] {
  if (first === undefined) return [];
  const others = subsetsOf(rest);
  return [[first], ...others, ...others.map((set) => [first, ...set])];
}
