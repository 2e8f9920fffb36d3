// What the child chooses among: the shapes beside the frame.
import { choiceAmong, type Decision, takenFor } from '../decision.ts';
import type { Answer, Printed } from './task.ts';

/** However the shapes lie: a wrong one was taken for that in the frame. */
export function decisions({ model, choices }: Printed, answer: Answer): readonly Decision[] {
  return [takenFor(model, choiceAmong(choices, answer))];
}
