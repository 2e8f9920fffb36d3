// What answers teach about a child: each is taken in exactly for its skill, then carried to all that hangs on it.
import { type Ability, abilityOf, type Belief, onDay, shown, withSkill } from './ability.ts';
import { tilted } from './quadrature.ts';
import { type Answer, FORM_SD, outcomeProbability } from './response-model.ts';

/** One tap for all tasks of a sheet. */
export interface WholeSheet extends Omit<Answer, 'logits'> {
  /** The difficulty of each task. */
  readonly tasks: readonly number[];
}

/** One tap for many tasks is rounder than a tap for each, and counts half: common practice, no source. */
export const WHOLE_SHEET_WEIGHT = 0.5;

/**
 * The belief after answers given on a day, in order. Neighbours of one skill count as the tasks of one sheet, of which
 * all share one form of the day (`FORM_SD`), and are taken in together, so that nothing is lost between them.
 */
export function afterAnswers(
  belief: Belief,
  answers: readonly Answer[],
  day: number,
  formSd = FORM_SD,
): Belief {
  const later = onDay(belief, day);
  return runsOf(answers).reduce((before, run) => afterRun(before, run, 1, formSd), later);
}

/** The belief after a sheet that was recorded with one tap. */
export function afterWholeSheet(
  belief: Belief,
  { tasks, ...rest }: WholeSheet,
  day: number,
): Belief {
  const answers = tasks.map((logits) => ({ ...rest, logits }));
  return afterRun(onDay(belief, day), answers, WHOLE_SHEET_WEIGHT, FORM_SD);
}

/** Neighbouring answers of one skill. */
function runsOf(answers: readonly Answer[]): readonly (readonly Answer[])[] {
  const runs: Answer[][] = [];
  for (const answer of answers) {
    const last = runs.at(-1);
    if (last?.[0]?.skill === answer.skill) last.push(answer);
    else runs.push([answer]);
  }
  return runs;
}

/**
 * Assumed-density filtering: the ability as it shows on the sheet, η = hᵀx + form, is normal before (m, s); afterwards
 * it is given the mean m' and variance s' of the exact product with the likelihood, and the whole state follows as in
 * a linear normal model: x' = x + Σh (m' − m) / s and Σ' = Σ − Σh hᵀΣ (s − s') / s².
 */
function afterRun(
  belief: Belief,
  answers: readonly Answer[],
  weight: number,
  formSd: number,
): Belief {
  const [first] = answers;
  if (!first) return belief;
  const known = withSkill(belief, first.skill);
  const { mean, sd } = shown(abilityOf(known, first.skill), formSd);
  if (!(sd > 0)) return known;
  const likelihood = (ability: number) =>
    answers.reduce((product, answer) => product * outcomeProbability(ability, answer), 1);
  const next = tilted(mean, sd, (ability) => likelihood(ability) ** weight);
  const variance = sd * sd;
  const shrink = (variance - next.variance) / variance ** 2;
  return carried(known, first.skill, (next.mean - mean) / variance, shrink);
}

function carried(belief: Belief, skill: string, shift: number, shrink: number): Belief {
  const index = belief.skills.indexOf(skill) + 1;
  const reach = belief.covariance.map((row) => (row[0] ?? 0) + (row[index] ?? 0));
  return {
    ...belief,
    mean: belief.mean.map((value, part) => value + (reach[part] ?? 0) * shift),
    covariance: belief.covariance.map((row, one) =>
      row.map((value, other) => value - (reach[one] ?? 0) * (reach[other] ?? 0) * shrink),
    ),
  };
}

/**
 * By how much one task of a difficulty is expected to lessen the variance of the ability, in square logits:
 * over its being right alone or not.
 */
export function expectedNarrowing(ability: Ability, logits: number, chance: number): number {
  const { mean, sd } = shown(ability, FORM_SD);
  const right: Answer = { skill: '', logits, chance, outcome: 'right' };
  const left = [right, { ...right, outcome: 'not-yet' } as const].map((answer) => {
    const next = tilted(mean, sd, (each) => outcomeProbability(each, answer));
    return next.mass * next.variance;
  });
  const lessened = sd * sd - left.reduce((sum, each) => sum + each, 0);
  return lessened * (ability.sd / sd) ** 4;
}
