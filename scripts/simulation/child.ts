// Simulated children, who answer by another model than the learner's: a normal ogive with slopes of their own.
import type { Random } from '../../src/base/index.ts';
import { between, isSo, normal, normalShare } from './chances.ts';

export const SKILLS = ['colour', 'form', 'size', 'direction', 'number', 'pattern'] as const;
export type Skill = (typeof SKILLS)[number];

/** Two kinds of sheet for each skill, with other numbers of figures to choose from. */
export const CHOICES = [4, 3] as const;
export const TASKS = 4;

export interface Child {
  readonly skills: ReadonlyMap<Skill, SkillOf>;
  /** Growth of all skills, logits a day. */
  readonly growth: number;
  /** Growth of a skill with each sheet of it, logits. */
  readonly practice: number;
  /** Probability of not looking at all at a task. */
  readonly lapse: number;
  /** Standard deviation of the day's form, logits. */
  readonly moods: number;
  /** How often one wrong figure is ruled out before guessing. */
  readonly rulesOut: number;
}

interface SkillOf {
  /** The difficulty, in logits, that is known half of the time on the first day. */
  readonly start: number;
  /** Steepness against a logistic; 1: as steep. */
  readonly slope: number;
  /** By how much each kind of sheet is harder for this child than reckoned, logits. */
  readonly misreckoned: readonly number[];
}

/** Children of three to five: older ones more able; skills apart from each other, now and then far apart. */
export function newChild(random: Random): Child {
  const age = between(random, 3, 6);
  const general = normal(random, -1.4 + 0.9 * (age - 3), 0.8);
  const manner = normal(random, 0, 0.3);
  const skills = SKILLS.map((skill) => [skill, skillOf(random, general, manner)] as const);
  return {
    skills: new Map(skills),
    growth: between(random, 0, 2.5) / 365,
    practice: between(random, 0, 0.06),
    lapse: isSo(random, 0.1) ? between(random, 0.12, 0.25) : between(random, 0, 0.08),
    moods: between(random, 0.1, 0.6),
    rulesOut: between(random, 0, 0.5),
  };
}

function skillOf(random: Random, general: number, manner: number): SkillOf {
  const apart = isSo(random, 0.1) ? normal(random, 0, 1.5) : normal(random, 0, 0.6);
  return {
    start: general + apart,
    slope: Math.exp(manner + normal(random, 0, 0.25)),
    misreckoned: CHOICES.map(() => normal(random, 0, 0.3)),
  };
}

function ofSkill(child: Child, skill: Skill): SkillOf {
  const own = child.skills.get(skill);
  if (!own) throw new Error(`simulation › child: expected one of ${SKILLS.join(', ')}`);
  return own;
}

/** The difficulty that the child knows half of the time, on a day after so many sheets of the skill. */
export function trueAbility(child: Child, skill: Skill, day: number, sheets: number): number {
  return ofSkill(child, skill).start + child.growth * day + child.practice * sheets;
}

/** A normal ogive is nearest to a logistic when its argument is divided so (Haley 1952). */
const OGIVE = 1.702;

/** Probability of being right at a task, for a form of the day (0: as usual). */
export function trueSuccess(
  child: Child,
  skill: Skill,
  kind: number,
  ability: number,
  logits: number,
): number {
  const { slope, misreckoned } = ofSkill(child, skill);
  const gap = ability - logits - (misreckoned[kind] ?? 0);
  const knows = normalShare((slope * gap) / OGIVE);
  const choices = CHOICES[kind] ?? 2;
  const guess = child.rulesOut / (choices - 1) + (1 - child.rulesOut) / choices;
  return child.lapse / choices + (1 - child.lapse) * (knows + (1 - knows) * guess);
}
