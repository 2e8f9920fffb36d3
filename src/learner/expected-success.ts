// How probable success is as far as is known, and which difficulty gives the wanted one.
import { type Ability, shown } from './ability.ts';
import { meanOver } from './quadrature.ts';
import { FORM_SD, LAPSE, rightProbability } from './response-model.ts';

/**
 * The success to aim at. Wilson, Shenhav, Straccia & Cohen 2019, Nature Comm. 10:4646: about 0.84 for two choices and
 * normal noise; by the same reckoning 0.824 for a logistic model.
 */
export const WANTED_SUCCESS = 0.82;
/** As good as the wanted success: the figure above holds for one kind of task only, so a band is the honest form. */
export const SUCCESS_BAND = { least: 0.75, most: 0.9 } as const;

/** No task of ours is further off; logits. */
const REACH = 12;
/** Halvings of the range: to less than 0.003 logits. */
const HALVINGS = 13;

/** Probability of being right alone, over all abilities that the child may have and all forms of the day. */
export function expectedSuccess(
  ability: Ability,
  logits: number,
  chance: number,
  formSd = FORM_SD,
): number {
  const { mean, sd } = shown(ability, formSd);
  const task = { logits, chance };
  return meanOver(mean, sd, (each) => rightProbability(each, task));
}

/**
 * The difficulty, to 0.01 logits, at which success is as wanted. Success lies between `chance` and 1 − `LAPSE`; what
 * is wanted beyond that gets the nearest difficulty within 12 logits of the ability.
 */
export function logitsFor(ability: Ability, chance: number, wanted = WANTED_SUCCESS): number {
  const goal = Math.min(wanted, 1 - LAPSE);
  let [easy, hard] = [ability.mean - REACH, ability.mean + REACH];
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (easy + hard) / 2;
    if (expectedSuccess(ability, middle, chance) > goal) easy = middle;
    else hard = middle;
  }
  return Math.round(50 * (easy + hard)) / 100;
}
