// Finds every choice that may be taken for the model, from the printed page alone.
import { type Told, told } from '../../base/index.ts';
import { type Figure, fairlyDifferent, formOf, sameFigure } from '../../figures/index.ts';
import type { Findings } from '../activity.ts';
import type { Answer, Printed } from './task.ts';

/**
 * The choices that print like the model first; then those that are hard to tell from it, and those that are
 * it but for how they lie, where the page does not show that direction is meant. Each is an answer.
 */
export function solve({ model, choices }: Printed): Findings<Answer> {
  const places = choices.map((_, place) => place);
  const holding = (isSo: (choice: Figure) => boolean) =>
    places.filter((place) => {
      const choice = choices[place];
      return choice !== undefined && isSo(choice);
    });
  const alike = holding((choice) => sameFigure(model, choice));
  const loose = holding(
    (choice) => !fairlyDifferent(model, choice) || isTurnedSame(model, choice, choices),
  );
  return {
    answers: alike.length === 0 ? [] : [...new Set([...alike, ...loose])],
    faults: faultsOf(choices.length, alike),
  };
}

/**
 * The same figure lying otherwise. Where all figures are of one form only direction can be meant, and each
 * must lie as the model does; where forms differ, a turned one is the same thing to many a child.
 */
function isTurnedSame(model: Figure, choice: Figure, choices: readonly Figure[]): boolean {
  const isDirectionMeant = choices.every((other) => formOf(other) === formOf(model));
  if (isDirectionMeant) return false;
  const upright = { turn: 0, mirrored: false };
  return sameFigure({ ...model, ...upright }, { ...choice, ...upright });
}

function faultsOf(choices: number, alike: readonly number[]): readonly Told[] {
  return [
    ...(choices < 2 ? [told('find-the-same', 'fault.one-choice')] : []),
    ...(alike.length === 0 ? [told('find-the-same', 'fault.none')] : []),
    ...(alike.length > 1
      ? [
          told('find-the-same', 'fault.several', {
            places: { list: alike.map((place) => place + 1) },
          }),
        ]
      : []),
  ];
}
