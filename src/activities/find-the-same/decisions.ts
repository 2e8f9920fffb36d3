// What the child chooses among: the figures beside the frame.
import { choiceAmong, type Decision, takenFor } from '../decision.ts';
import type { Answer, Printed } from './task.ts';

export function decisions({ model, choices }: Printed, answer: Answer): readonly Decision[] {
  return [takenFor(model, choiceAmong(choices, [answer]))];
}
