// What the child decides: of each pair, whether its two are the same.
import { type Decision, takenFor } from '../decision.ts';
import type { Answer, Printed } from './task.ts';

/**
 * What the right figure of a pair is taken for. The first option is the left figure: they were called the same. The
 * second is the right figure itself: they were called different. Only two that differ can be taken for each other.
 */
export function decisions({ pairs }: Printed, answer: Answer): readonly Decision[] {
  return pairs.map(([left, right], about) => {
    const isSame = answer.includes(about);
    const options = [
      { figure: left, isRight: isSame },
      { figure: right, isRight: !isSame },
    ];
    return takenFor(isSame ? undefined : right, { about, options });
  });
}
