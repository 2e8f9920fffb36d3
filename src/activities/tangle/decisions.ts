// What the child chooses among: the outlines beside the tangle. Which of several a wrong one was seen as stays unsaid.
import { choiceAmong, type Decision } from '../decision.ts';
import type { Answer, Printed } from './task.ts';

export function decisions({ candidates }: Printed, answer: Answer): readonly Decision[] {
  return [choiceAmong(candidates, answer)];
}
