// What the child chooses among: the figures below the fold.
import { choiceAmong, type Decision, takenFor } from '../decision.ts';
import type { Answer, Printed } from './task.ts';

/** Of several figures in the frame it stays unsaid which a wrong one was taken for. */
export function decisions({ set, choices }: Printed, answer: Answer): readonly Decision[] {
  const [only, ...others] = set;
  return [takenFor(others.length === 0 ? only : undefined, choiceAmong(choices, answer))];
}
