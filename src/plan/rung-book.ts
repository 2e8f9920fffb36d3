// The rungs of ladders with what their tasks ask, measured once from a small sample and kept.
import {
  type ActivityId,
  type AgeHint,
  activityOf,
  type Material,
  type Values,
} from '../activities/index.ts';
import { randomFrom } from '../base/index.ts';
import { type Asked, climb, difficultyFrom, sampleSeeds } from '../learner/index.ts';
import type { PrintStyle } from '../page/index.ts';

/** One rung of a ladder with some values asked for. */
export interface Rung {
  readonly activity: ActivityId;
  /** 1 upward. */
  readonly step: number;
  readonly age: AgeHint;
  readonly values: Values;
  /** Mean difficulty of the sample, in logits. */
  readonly logits: number;
  /** Mean probability of being right by chance alone, 0 to 1. */
  readonly chance: number;
  /** The hardest movement that it asks of the hand, 0 to 7. */
  readonly hand: number;
  /** Mean of smaller over larger for quantities that are near each other, 0 to 1; 0 where there are none. */
  readonly quantities: number;
  readonly materials: ReadonlySet<Material['kind']>;
}

export interface RungBook {
  /** How many rungs the ladder has; 0 where what is asked for cannot be had. */
  readonly count: (activity: ActivityId, asked: Asked) => number;
  /** The rung of a step, 1 to `count`. */
  readonly rung: (activity: ActivityId, asked: Asked, step: number) => Rung;
  /** What is in the book so far of an activity, to be handed to another book of the same print. */
  readonly pagesOf: (activity: ActivityId) => BookPages;
  /** Takes over what another book measured: it is what this one would measure. */
  readonly add: (pages: BookPages) => void;
}

/** Ladders and rungs by what was asked for; plain values, which a worker can be sent. */
export interface BookPages {
  readonly ladders: readonly (readonly [asked: string, ladder: readonly Values[]])[];
  readonly rungs: readonly (readonly [asked: string, rung: Rung])[];
}

/** Enough to place a rung within about a tenth of a logit; which sheet is made measures its own difficulty. */
const SAMPLE = 8;

/** Rungs are measured when they are first asked for. */
export function rungBook(style: PrintStyle): RungBook {
  const ladders = new Map<string, readonly Values[]>();
  const rungs = new Map<string, Rung>();
  const ladderOf = (activity: ActivityId, asked: Asked) =>
    known(ladders, keyOf(activity, asked), () => {
      const climbed = climb(activityOf(activity), asked, style);
      return climbed.ok ? climbed.value : [];
    });
  return {
    count: (activity, asked) => ladderOf(activity, asked).length,
    rung: (activity, asked, step) =>
      known(rungs, `${keyOf(activity, asked)} ${step}`, () => {
        const values = ladderOf(activity, asked)[step - 1];
        if (!values)
          throw new Error(`plan › ${activity}: expected a step of the ladder, got ${step}`);
        return measured(activity, step, values, style);
      }),
    pagesOf: (activity) => {
      const isOf = ([key]: readonly [string, unknown]) => key.startsWith(`${activity} `);
      return { ladders: [...ladders].filter(isOf), rungs: [...rungs].filter(isOf) };
    },
    add: (pages) => {
      for (const [key, ladder] of pages.ladders) ladders.set(key, ladder);
      for (const [key, rung] of pages.rungs) rungs.set(key, rung);
    },
  };
}

function keyOf(activity: ActivityId, asked: Asked): string {
  return `${activity} ${JSON.stringify(asked)}`;
}

function known<T>(kept: Map<string, T>, key: string, make: () => T): T {
  const before = kept.get(key);
  if (before !== undefined) return before;
  const made = make();
  kept.set(key, made);
  return made;
}

function measured(id: ActivityId, step: number, values: Values, style: PrintStyle): Rung {
  const activity = activityOf(id);
  const tasks = sampleSeeds(SAMPLE).map((seed) =>
    activity.generate(values, randomFrom(seed), style),
  );
  const features = tasks.map(({ printed }) => activity.features(printed));
  const mean = (amounts: readonly number[]) =>
    amounts.reduce((sum, amount) => sum + amount, 0) / amounts.length;
  return {
    activity: id,
    step,
    age: activity.ladder[step - 1]?.age ?? 3,
    values,
    logits: mean(features.map((each) => difficultyFrom(each).logits)),
    chance: mean(tasks.map(({ printed }) => activity.chance(printed))),
    hand: Math.max(...features.map(({ hand = 0 }) => hand)),
    quantities: mean(features.map(({ quantities = 0 }) => quantities)),
    materials: new Set(tasks.flatMap((task) => activity.materials(task).map(({ kind }) => kind))),
  };
}
