// Three ways to give the next sheet: the learner model, a fixed ladder, a staircase.
import type { Random } from '../../src/base/index.ts';
import {
  type Answer,
  abilityOf,
  afterAnswers,
  type Candidate,
  chooseSheet,
  logitsFor,
  newBelief,
  ninetyPercent,
  onDay,
} from '../../src/learner/index.ts';
import { CHOICES, SKILLS, type Skill } from './child.ts';

export interface Given {
  readonly skill: Skill;
  /** Index of the kind of sheet. */
  readonly kind: number;
  /** Difficulty asked for. */
  readonly logits: number;
}

export interface Estimate {
  readonly mean: number;
  /** Absent: the policy has none. */
  readonly interval?: readonly [number, number];
}

/** One child's course under a policy. */
export interface Run {
  next(day: number): Given;
  taken(given: Given, answers: readonly Answer[], day: number): void;
  estimate(skill: Skill, day: number): Estimate;
}

export interface Policy {
  readonly name: string;
  readonly start: (random: Random) => Run;
}

/** What sheets can be had: difficulties in quarters of a logit. */
const LEAST = -3.5;
const MOST = 3.5;

function toBeHad(logits: number): number {
  return Math.min(MOST, Math.max(LEAST, Math.round(4 * logits) / 4));
}

export const learner: Policy = {
  name: 'the learner model',
  start: (random) => {
    let belief = newBelief(0);
    const last = new Map<string, number>();
    const candidateOf = (skill: Skill, kind: number, day: number): Candidate => {
      const chance = 1 / (CHOICES[kind] ?? 2);
      const activity = `${skill} ${kind}`;
      const before = last.get(activity);
      const rest = before === undefined ? {} : { restedDays: day - before };
      const logits = toBeHad(logitsFor(abilityOf(belief, skill), chance));
      return { id: activity, skill, activity, logits, chance, ...rest };
    };
    return {
      next: (day) => {
        belief = onDay(belief, day);
        const all = SKILLS.flatMap((skill) => CHOICES.map((_, kind) => ({ skill, kind })));
        const candidates = all.map(({ skill, kind }) => candidateOf(skill, kind, day));
        const choice = chooseSheet(belief, candidates, random);
        const given = all.find(({ skill, kind }) => `${skill} ${kind}` === choice?.candidate.id);
        if (!choice || !given) throw new Error('simulation › learner: expected a sheet, got none');
        return { ...given, logits: choice.candidate.logits };
      },
      taken: ({ skill, kind }, answers, day) => {
        last.set(`${skill} ${kind}`, day);
        belief = afterAnswers(belief, answers, day);
      },
      estimate: (skill, day) => {
        const ability = abilityOf(onDay(belief, day), skill);
        return { mean: ability.mean, interval: ninetyPercent(ability) };
      },
    };
  },
};

/** Twelve rungs, from the easiest steps to the hardest, begun at the first. */
const RUNGS = 12;
const FIRST_RUNG = -2.5;
const RUNG = 0.45;

/** How a policy moves after a sheet, in rungs; it may remember. */
type Step = (answers: readonly Answer[]) => number;

/** Skills in turn, each with a rung of its own, or all with one. */
function rungs(name: string, success: number, stepper: () => Step, isShared = false): Policy {
  return {
    name,
    start: () => {
      const places = isShared ? ['all'] : SKILLS;
      const placeOf = (skill: Skill) => (isShared ? 'all' : skill);
      const rung = new Map<string, number>(places.map((place) => [place, 0]));
      const step = new Map<string, Step>(places.map((place) => [place, stepper()]));
      const logitsOf = (skill: Skill) => FIRST_RUNG + RUNG * (rung.get(placeOf(skill)) ?? 0);
      let sheets = 0;
      return {
        next: () => {
          const skill = SKILLS[sheets % SKILLS.length] ?? 'colour';
          const kind = Math.floor(sheets / SKILLS.length) % CHOICES.length;
          sheets++;
          return { skill, kind, logits: logitsOf(skill) };
        },
        taken: ({ skill }, answers) => {
          const place = placeOf(skill);
          const moved = (rung.get(place) ?? 0) + (step.get(place)?.(answers) ?? 0);
          rung.set(place, Math.min(RUNGS - 1, Math.max(0, moved)));
        },
        // The ability at which a rung has the success that the policy settles at, guessing among four left out.
        estimate: (skill) => {
          const known = (success - 1 / 4) / (3 / 4);
          return { mean: logitsOf(skill) + Math.log(known / (1 - known)) };
        },
      };
    },
  };
}

function isRight({ outcome }: Answer): boolean {
  return outcome === 'right';
}

/** One rung up after a sheet with at least 80 of 100 right alone, else the same again; never down. */
export const ladder = rungs('fixed ladder', 0.8, () => (answers) => {
  return answers.filter(isRight).length >= 0.8 * answers.length ? 1 : 0;
});

/**
 * Three right alone in a row: one rung harder, and the row begins anew; each other answer: one rung easier. On the
 * scale of stimulus strength this is 3-down-1-up (Levitt 1971, J. Acoust. Soc. Am. 49(2B), 467–477), which settles
 * where 0.5^(1/3) = 0.794 are right. The row runs on from sheet to sheet of a skill; since paper cannot change under
 * the pencil, the moves of a sheet come with the next.
 */
function threeInARow(): Step {
  let row = 0;
  return (answers) => {
    let moves = 0;
    for (const answer of answers) {
      row = isRight(answer) ? row + 1 : 0;
      if (row === 0) moves--;
      if (row === 3) moves++;
      row %= 3;
    }
    return moves;
  };
}

/** Where 0.5^(1/3) of the answers are right. */
const SETTLES = 0.794;

export const staircase = rungs('3-up-1-down staircase', SETTLES, threeInARow);
/** The same with one rung for all skills, which it then finds sooner. */
export const sharedStaircase = rungs('staircase, one for all skills', SETTLES, threeInARow, true);
