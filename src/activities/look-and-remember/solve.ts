// Finds every set of choices that may be said to have been in the frame, from the printed page alone.
import { told } from '../../base/index.ts';
import { type Figure, fairlyDifferent, formOf, sameFigure } from '../../figures/index.ts';
import type { Findings } from '../activity.ts';
import type { Answer, Printed } from './task.ts';

const MOST_ANSWERS = 20;

/** What is plainly in the frame, with and without each choice that may or may not be taken for something in it. */
export function solve({ set, choices }: Printed): Findings<Answer> {
  const areFormsMany = new Set([...set, ...choices].map(formOf)).size > 1;
  const verdicts = choices.map((choice) => verdictOn(choice, set, areFormsMany));
  const placesOf = (wanted: Verdict) =>
    verdicts.flatMap((verdict, place) => (verdict === wanted ? [place] : []));
  const sure = placesOf('seen');
  return {
    answers: withAndWithout(sure, placesOf('doubtful')),
    faults: [
      ...(hasTwins(set) ? [told('look-and-remember', 'fault.twice')] : []),
      ...(hasTwins(choices) ? [told('look-and-remember', 'fault.choices-alike')] : []),
      ...(sure.length === 0 ? [told('look-and-remember', 'fault.none')] : []),
      ...(verdicts.includes('new') ? [] : [told('look-and-remember', 'fault.all')]),
    ],
  };
}

type Verdict = 'seen' | 'new' | 'doubtful';

function verdictOn(choice: Figure, set: readonly Figure[], areFormsMany: boolean): Verdict {
  if (set.some((figure) => sameFigure(figure, choice))) return 'seen';
  const isDoubtful = set.some(
    (figure) =>
      !fairlyDifferent(figure, choice) || (areFormsMany && sameFigure(laid(figure), laid(choice))),
  );
  return isDoubtful ? 'doubtful' : 'new';
}

/** As it lies when it is not turned: where forms differ, a turned one is the same thing to many a child. */
function laid(figure: Figure): Figure {
  return { ...figure, turn: 0, mirrored: false };
}

function hasTwins(figures: readonly Figure[]): boolean {
  return figures.some((one, index) =>
    figures.slice(index + 1).some((other) => sameFigure(one, other)),
  );
}

function withAndWithout(sure: Answer, doubtful: readonly number[]): readonly Answer[] {
  let sets: readonly Answer[] = [sure];
  for (const place of doubtful) {
    if (sets.length >= MOST_ANSWERS) break;
    sets = sets.flatMap((answer) => [answer, [...answer, place]]);
  }
  return sets.slice(0, MOST_ANSWERS).map((answer) => [...answer].sort((one, other) => one - other));
}
