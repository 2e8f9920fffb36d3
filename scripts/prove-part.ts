// A part of the tasks that `npm run prove` makes and proves: the same whichever thread works on it.
import { createHash } from 'node:crypto';
import { type Activity, type ActivityId, activityOf, faultIn } from '../src/activities/index.ts';
import { MAX_SEED, randomFrom } from '../src/base/index.ts';
import { type Rung, rungsOf } from './every-rung.ts';
import { count, noTimings, type Timings } from './timings.ts';

/** Tasks number `from` and on of an activity, each of the next rung. */
export interface Part {
  readonly activity: ActivityId;
  readonly from: number;
  readonly tasks: number;
  readonly seed: number;
}

export interface Proven {
  readonly rungs: number;
  /** Tasks that were made and whose answers are not exactly the key. */
  readonly notCertain: number;
  /** Tasks that could not be made. */
  readonly failed: number;
  /** What is wrong with the first of them, and how to make them again. */
  readonly shown: readonly string[];
  /** Of making and proving one task. */
  readonly timings: Timings;
  /** SHA-256 of all tasks as text. */
  readonly hash: string;
}

const MOST_SHOWN = 5;

export function provePart(part: Part): Proven {
  const activity = activityOf(part.activity);
  const rungs = rungsFor(activity);
  const random = randomFrom(part.seed);
  const [timings, hash] = [noTimings(), createHash('sha256')];
  const shown: string[] = [];
  let [notCertain, failed] = [0, 0];
  for (let index = part.from; index < part.from + part.tasks; index++) {
    const rung = rungs[index % rungs.length];
    if (!rung) throw new Error(`${activity.id}: expected at least one rung, got none`);
    const seed = random.int(0, MAX_SEED);
    const start = process.hrtime.bigint();
    try {
      const task = activity.generate(rung.values, randomFrom(seed), rung.style);
      const proof = activity.prove(task);
      count(timings, Number(process.hrtime.bigint() - start) / 1e6);
      hash.update(JSON.stringify(task));
      if (proof.proven) continue;
      notCertain += 1;
      shown.push(tell(activity, rung, seed, faultIn('en', proof.detail)));
    } catch (error) {
      failed += 1;
      shown.push(tell(activity, rung, seed, String(error)));
    }
    shown.length = Math.min(shown.length, MOST_SHOWN);
  }
  const found = { rungs: rungs.length, notCertain, failed, shown, timings };
  return { ...found, hash: hash.digest('hex') };
}

const KNOWN = new Map<string, readonly Rung[]>();

function rungsFor(activity: Activity): readonly Rung[] {
  const rungs = KNOWN.get(activity.id) ?? rungsOf(activity);
  KNOWN.set(activity.id, rungs);
  return rungs;
}

function tell(activity: Activity, rung: Rung, seed: number, detail: string): string {
  const where = `${activity.id}, ${rung.content}, step ${rung.step}, ${rung.style.print}`;
  return `${where}, seed ${seed}: ${detail}\n    ${JSON.stringify(rung.values)}`;
}
