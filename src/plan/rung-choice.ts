// Which rungs of a ladder a child is ready for.
import { type ActivityId, activityOf } from '../activities/index.ts';
import {
  type Ability,
  type Asked,
  abilityOf,
  expectedSuccess,
  WANTED_SUCCESS,
} from '../learner/index.ts';
import type { Rung, RungBook } from './rung-book.ts';
import type { Standing } from './standing.ts';
import { type Bounds, responsesOf, suits } from './suits.ts';

export interface RungSetting {
  readonly standing: Standing;
  readonly bounds: Bounds;
  readonly book: RungBook;
}

/**
 * The rungs on both sides of the wanted success with this content, as far as they suit the child: with the ladder's own
 * response, or with the first one that does. None where no response does.
 */
export function rungFor(
  setting: RungSetting,
  id: ActivityId,
  content: string,
  wanted = WANTED_SUCCESS,
): readonly Rung[] {
  for (const response of responsesOf(id)) {
    const asked: Asked = response === undefined ? { content } : { content, response };
    const rungs = suitableRungs(setting, id, asked, wanted);
    if (rungs.length > 0) return rungs;
  }
  return [];
}

/** Those of the two rungs that suit; where neither does, the hardest below them that does. */
function suitableRungs(
  setting: RungSetting,
  id: ActivityId,
  asked: Asked,
  wanted: number,
): readonly Rung[] {
  const steps = nearestSteps(setting, id, asked, wanted);
  const rungs = steps.map((step) => setting.book.rung(id, asked, step));
  const suitable = rungs.filter((rung) => suits(rung, setting.bounds));
  if (suitable.length > 0) return suitable;
  for (let step = (steps[0] ?? 1) - 1; step >= 1; step--) {
    const rung = setting.book.rung(id, asked, step);
    if (suits(rung, setting.bounds)) return [rung];
  }
  return [];
}

/** The hardest step at which success is at least as wanted, and the next. */
export function nearestSteps(
  { standing, book }: Pick<RungSetting, 'standing' | 'book'>,
  id: ActivityId,
  asked: Asked,
  wanted = WANTED_SUCCESS,
): readonly number[] {
  const ability = abilityOf(standing.belief, activityOf(id).skill);
  const easy = hardestStep(book, id, asked, ability, wanted);
  return [easy, easy + 1].filter((step) => step >= 1 && step <= book.count(id, asked));
}

/** The hardest step at which success is at least as wanted; 0: none is. Ladders rise, so halving finds it. */
export function hardestStep(
  book: RungBook,
  id: ActivityId,
  asked: Asked,
  ability: Ability,
  wanted = WANTED_SUCCESS,
): number {
  let [easy, hard] = [0, book.count(id, asked) + 1];
  while (hard - easy > 1) {
    const middle = Math.floor((easy + hard) / 2);
    const { logits, chance } = book.rung(id, asked, middle);
    if (expectedSuccess(ability, logits, chance) >= wanted) easy = middle;
    else hard = middle;
  }
  return easy;
}
