// What the child decides: for each item by which entry of the key it is treated.
import { type Decision, takenFor } from '../decision.ts';
import type { Answer, Printed } from './task.ts';

export function decisions({ key, items }: Printed, answer: Answer): readonly Decision[] {
  return items.map((_, about) => {
    const right = answer[about] ?? -1;
    const options = key.map(({ figure }, place) => ({ figure, isRight: place === right }));
    return takenFor(key[right]?.figure, { about, options });
  });
}
