// Finds every choice that may be taken for the model up to turn and size, from the printed page alone.
import { type Told, told } from '../../base/index.ts';
import type { Figure } from '../../figures/index.ts';
import type { Findings } from '../activity.ts';
import { becomesOther, isSameForm, mayBeTaken } from './solve-forms.ts';
import type { Answer, Printed } from './task.ts';

const MOST_ANSWERS = 20;

/**
 * Each choice is laid on the model in thought, turned and scaled; colour and fill are left out. What fits is right.
 * What nearly fits at some turn, and a mirror image unless the child is told of them, may be taken for right as
 * well: each such choice makes a second answer.
 */
export function solve({ model, choices, matches = 1, mirrors = false }: Printed): Findings<Answer> {
  const placesWhere = (holds: (figure: Figure) => boolean) =>
    choices.flatMap((figure, place) => (holds(figure) ? [place] : []));
  const right = placesWhere((figure) => isSameForm(model, figure));
  const loose = placesWhere(
    (figure) => !isSameForm(model, figure) && mayBeTaken(model, figure, mirrors),
  );
  const sets = [right, ...loose.map((place) => [...right, place].sort((a, b) => a - b))];
  return {
    answers: right.length === 0 ? [] : sets.slice(0, MOST_ANSWERS),
    faults: faultsOf(model, choices, right, matches),
  };
}

function faultsOf(
  model: Figure,
  choices: readonly Figure[],
  right: readonly number[],
  matches: number,
): readonly Told[] {
  const turned = right.flatMap((place) => choices[place] ?? []);
  return [
    ...(right.length === 0 ? [told('turned-shapes', 'fault.none')] : []),
    ...(right.length === choices.length ? [told('turned-shapes', 'fault.all')] : []),
    ...(right.length > 0 && right.length !== matches
      ? [told('turned-shapes', 'fault.matches', { right: right.length, matches })]
      : []),
    ...(turned.some((figure) => becomesOther(model, figure))
      ? [told('turned-shapes', 'fault.another')]
      : []),
  ];
}
