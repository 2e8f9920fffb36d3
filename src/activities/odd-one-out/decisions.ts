// What the child chooses among: all figures of the task.
import { choiceAmong, type Decision, takenFor } from '../decision.ts';
import { distinctFigures } from '../figure-features.ts';
import type { Answer, Printed } from './task.ts';

/** Where all others are alike, a wrong choice says that the odd one was not told from them. */
export function decisions({ figures }: Printed, { odd }: Answer): readonly Decision[] {
  const others = figures.filter((_, place) => place !== odd);
  const areAlike = distinctFigures(others).length === 1;
  return [takenFor(areAlike ? figures[odd] : undefined, choiceAmong(figures, [odd]))];
}
