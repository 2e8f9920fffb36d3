// What the child chooses among: for each start all the ends. A wrong end says nothing of how figures look.
import type { Figure } from '../../figures/index.ts';
import { choiceAmong, type Decision } from '../decision.ts';
import type { Answer, Printed } from './task.ts';

/** What stands at an end that is to be filled. */
const EMPTY_CIRCLE: Figure = { form: 'circle', fill: 'outline' };

/** Starts are marked first. */
export function decisions({ starts, ends }: Printed, answer: Answer): readonly Decision[] {
  const choices = ends ?? starts.map(() => EMPTY_CIRCLE);
  return starts.map((_, about) => ({
    ...choiceAmong(choices, [answer[about] ?? -1], starts.length),
    about,
  }));
}
