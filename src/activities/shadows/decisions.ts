// What the child chooses among: for each model all the shadows.
import { choiceAmong, type Decision, takenFor } from '../decision.ts';
import type { Answer, Printed } from './task.ts';

/** Models are marked first. A wrong shadow was taken for the right one, which is in ink like it. */
export function decisions({ models, shadows }: Printed, answer: Answer): readonly Decision[] {
  return models.map((_, about) => {
    const right = answer[about] ?? -1;
    return { ...takenFor(shadows[right], choiceAmong(shadows, [right], models.length)), about };
  });
}
