// What the child chooses among where one figure is asked for; an order shows no single choice.
import { choiceAmong, type Decision, takenFor } from '../decision.ts';
import { type Answer, isOneAsked, type Printed } from './task.ts';

export function decisions(printed: Printed, answer: Answer): readonly Decision[] {
  const { figures } = printed;
  const [right = -1] = answer;
  return isOneAsked(printed) ? [takenFor(figures[right], choiceAmong(figures, answer))] : [];
}
