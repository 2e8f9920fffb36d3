// What the child chooses among: the places of the second picture, those included from which a figure has gone.
import type { Decision } from '../decision.ts';
import type { Answer, Printed } from './task.ts';

/** Marked by their number in reading order. A wrong place was overlooked beside its like, not taken for another. */
export function decisions({ first, second }: Printed, answer: Answer): readonly Decision[] {
  const options = second.flatMap((after, mark) => {
    const figure = after ?? first[mark];
    return figure ? [{ figure, isRight: answer.includes(mark), mark }] : [];
  });
  return [{ options }];
}
