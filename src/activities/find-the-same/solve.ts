// Finds every choice that may be taken for the model, from the printed page alone.
import { type Told, told } from '../../base/index.ts';
import { type Figure, fairlyDifferent, formOf, sameFigure } from '../../figures/index.ts';
import type { Findings } from '../activity.ts';
import { areAlikeUpright, areOfOneForm } from '../lying-otherwise.ts';
import type { Answer, Printed } from './task.ts';

/**
 * The choices that print like the model first; then those that are hard to tell from it, and those that are
 * it but for how they or their dots lie, where the page does not show that this is meant. Each is an answer.
 */
export function solve({ model, choices }: Printed): Findings<Answer> {
  const places = choices.map((_, place) => place);
  const holding = (isSo: (choice: Figure) => boolean) =>
    places.filter((place) => {
      const choice = choices[place];
      return choice !== undefined && isSo(choice);
    });
  const alike = holding((choice) => sameFigure(model, choice));
  const all = [model, ...choices];
  const loose = holding(
    (choice) =>
      !fairlyDifferent(model, choice) ||
      (!areOfOneForm(all) && areAlikeUpright(model, choice)) ||
      (!areOfOneNumber(all) && areAlikeButForLayout(model, choice)),
  );
  return {
    answers: alike.length === 0 ? [] : [...new Set([...alike, ...loose])],
    faults: faultsOf(choices.length, alike),
  };
}

/** Whether all are as many dots, so that only how these lie can be meant. */
function areOfOneNumber(figures: readonly Figure[]): boolean {
  return new Set(figures.map(({ count }) => count)).size === 1;
}

/** As many dots that lie otherwise: where numbers differ, these two are the same number. */
function areAlikeButForLayout(model: Figure, choice: Figure): boolean {
  const { layout, turn, mirrored } = model;
  return formOf(model) === 'dots' && sameFigure(model, { ...choice, layout, turn, mirrored });
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
