// Makes and proves very many tasks, over every activity, content and step: `npm run prove [tasks] [seed]`.
import {
  ACTIVITY_IDS,
  type Activity,
  activityOf,
  faultIn,
  type Values,
} from '../src/activities/index.ts';
import { type Random, randomFrom } from '../src/base/index.ts';
import { climb } from '../src/learner/index.ts';
import type { PrintStyle } from '../src/page/index.ts';

const USUAL_TASKS = 200_000;
const STYLES: readonly PrintStyle[] = [{ print: 'colour' }, { print: 'grey' }];
const MOST_SHOWN = 20;

/** Values of one rung with one content, in one print. */
interface Rung {
  readonly content: string;
  readonly step: number;
  readonly values: Values;
  readonly style: PrintStyle;
}

interface Tally {
  readonly activity: string;
  readonly rungs: number;
  readonly tasks: number;
  readonly notCertain: number;
  readonly failed: number;
  /** Of making and proving one task. */
  readonly medianMs: number;
}

export function main([tasks = String(USUAL_TASKS), seed = '1']: readonly string[]): void {
  const share = Math.ceil(Number(tasks) / ACTIVITY_IDS.length);
  if (!(share > 0)) throw new Error(`prove › tasks: expected a number above 0, got ${tasks}`);
  console.log(`making and proving ${tasks} tasks, seed ${seed} (npm run prove ${tasks} ${seed})\n`);
  const random = randomFrom(Number(seed));
  const tallies = ACTIVITY_IDS.map((id) => tell(proveActivity(activityOf(id), share, random)));
  const sum = (count: (tally: Tally) => number) =>
    tallies.reduce((total, tally) => total + count(tally), 0);
  const bad = sum(({ notCertain }) => notCertain) + sum(({ failed }) => failed);
  console.log(
    `\n${sum((tally) => tally.tasks)} tasks of ${sum(({ rungs }) => rungs)} rungs: ${bad === 0 ? 'all certain' : `${bad} bad`}`,
  );
  process.exitCode = bad === 0 ? 0 : 1;
}

function tell(tally: Tally): Tally {
  const { activity, rungs, tasks, notCertain, failed, medianMs } = tally;
  console.log(
    `${activity.padEnd(18)} ${String(rungs).padStart(4)} rungs ${String(tasks).padStart(7)} tasks  ${notCertain} not certain  ${failed} failed  ${medianMs.toFixed(2)} ms a task`,
  );
  return tally;
}

function proveActivity(activity: Activity, tasks: number, random: Random): Tally {
  const rungs = rungsOf(activity);
  const times: number[] = [];
  let [notCertain, failed] = [0, 0];
  for (let index = 0; index < tasks; index++) {
    const rung = rungs[index % rungs.length];
    if (!rung) throw new Error(`${activity.id}: expected at least one rung, got none`);
    const seed = random.int(0, 2 ** 32 - 1);
    const start = process.hrtime.bigint();
    try {
      const task = activity.generate(rung.values, randomFrom(seed), rung.style);
      const proof = activity.prove(task);
      if (!proof.proven) show(activity, rung, seed, faultIn('en', proof.detail), ++notCertain);
    } catch (error) {
      show(activity, rung, seed, String(error), ++failed);
    }
    times.push(Number(process.hrtime.bigint() - start) / 1e6);
  }
  const medianMs = times.sort((one, other) => one - other)[tasks >> 1] ?? Number.NaN;
  return { activity: activity.id, rungs: rungs.length, tasks, notCertain, failed, medianMs };
}

function show(activity: Activity, rung: Rung, seed: number, detail: string, count: number): void {
  if (count > MOST_SHOWN) return;
  console.log(
    `  ${activity.id}, ${rung.content}, step ${rung.step}, ${rung.style.print}, seed ${seed}: ${detail}\n    ${JSON.stringify(rung.values)}`,
  );
}

/** The ladder with each content in each print, each different set of values once. */
function rungsOf(activity: Activity): readonly Rung[] {
  const { content } = activity.parameters;
  const contents = content?.kind === 'choice' ? content.values : [];
  const rungs = STYLES.flatMap((style) =>
    contents.flatMap((each) => {
      const climbed = climb(activity, { content: each }, style);
      if (!climbed.ok) throw new Error(`${activity.id}, ${each}: ${JSON.stringify(climbed)}`);
      return climbed.value.map((values, index) => ({
        content: each,
        step: index + 1,
        values,
        style,
      }));
    }),
  );
  const keyed = rungs.map((rung) => [JSON.stringify([rung.values, rung.style]), rung] as const);
  return [...new Map(keyed).values()];
}
