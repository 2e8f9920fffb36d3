// Thirty sheets for one child under a policy, and what they were worth.
import type { Random } from '../../src/base/index.ts';
import type { Answer } from '../../src/learner/index.ts';
import { between, isSo, normal } from './chances.ts';
import {
  CHOICES,
  type Child,
  SKILLS,
  type Skill,
  TASKS,
  trueAbility,
  trueSuccess,
} from './child.ts';
import type { Given, Policy, Run } from './policies.ts';

export const SHEETS = 30;
export const STOPS = [5, 10, 30] as const;

export interface Course {
  readonly policy: string;
  readonly child: Child;
  /** For each sheet, the true probability of being right at a task of it on a usual day. */
  readonly successes: readonly number[];
  /** After each of `STOPS`. */
  readonly stops: readonly Stop[];
}

export interface Stop {
  readonly sheets: number;
  /** For each skill that had a sheet: estimate less truth, and whether the interval holds the truth. */
  readonly errors: readonly number[];
  readonly covered: readonly boolean[];
}

export function courseOf(child: Child, policy: Policy, random: Random): Course {
  const run = policy.start(random.fork());
  const given = new Map<Skill, number>();
  const successes: number[] = [];
  const stops: Stop[] = [];
  let day = 0;
  for (let sheet = 1; sheet <= SHEETS; sheet++) {
    const next = run.next(day);
    const before = given.get(next.skill) ?? 0;
    const { success, answers } = take(
      child,
      next,
      trueAbility(child, next.skill, day, before),
      random,
    );
    successes.push(success);
    run.taken(next, answers, day);
    given.set(next.skill, before + 1);
    if (STOPS.some((stop) => stop === sheet)) stops.push(stopAt(child, run, given, sheet, day));
    day += random.int(1, 10) === 1 ? 14 : random.int(1, 3);
  }
  return { policy: policy.name, child, successes, stops };
}

/** A sheet's difficulty is met within this many logits, and its tasks lie around it with this sd. */
const AIM = 0.25;
const TASK_SD = 0.25;

function take(child: Child, { skill, kind, logits }: Given, ability: number, random: Random) {
  const mood = normal(random, 0, child.moods);
  const mean = logits + between(random, -AIM, AIM);
  const tasks = Array.from({ length: TASKS }, () => normal(random, mean, TASK_SD));
  const successAt = (task: number, form: number) =>
    trueSuccess(child, skill, kind, ability + form, task);
  const success = tasks.reduce((sum, task) => sum + successAt(task, 0), 0) / TASKS;
  const chance = 1 / (CHOICES[kind] ?? 2);
  const answers = tasks.map((task): Answer => {
    const about = { skill, logits: task, chance };
    if (isSo(random, successAt(task, mood))) return { ...about, outcome: 'right' };
    return { ...about, ...afterFailure(random, successAt(task, mood + 1.3)) };
  });
  return { success, answers };
}

/** Half of the failures are left; at the others a hint is given, and helps now and then. */
function afterFailure(random: Random, withHint: number): Pick<Answer, 'outcome' | 'help'> {
  if (isSo(random, 0.5)) return { outcome: 'not-yet' };
  return { outcome: isSo(random, 0.6 * withHint) ? 'with-help' : 'not-yet', help: 'hint' };
}

function stopAt(
  child: Child,
  run: Run,
  given: ReadonlyMap<Skill, number>,
  sheets: number,
  day: number,
): Stop {
  const each = SKILLS.filter((skill) => given.has(skill)).map((skill) => {
    const truth = trueAbility(child, skill, day, given.get(skill) ?? 0);
    const { mean, interval } = run.estimate(skill, day);
    const covered = interval ? [truth >= interval[0] && truth <= interval[1]] : [];
    return { error: mean - truth, covered };
  });
  return {
    sheets,
    errors: each.map(({ error }) => error),
    covered: each.flatMap(({ covered }) => covered),
  };
}
