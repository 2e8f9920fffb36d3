// Every solver notices when a rule is broken on purpose: the ways are beside each activity, in `wrong-to-test.ts`.
import { expect, test } from 'vitest';
import { type Rung, rungsOf } from '../../scripts/every-rung.ts';
import { ACTIVITY_IDS, type Activity, activityOf, type Task } from '../../src/activities/index.ts';
import type { WrongWays } from '../../src/activities/wrong-ways.ts';
import { MAX_SEED, type Random, randomFrom } from '../../src/base/index.ts';
import { changesOf } from '../every-task.ts';
import { testSeed } from '../seed.ts';

/** Of each activity so many tasks are broken in every way that they have, and more where a way had too few. */
const TASKS = 240;
const MOST_TASKS = 20 * TASKS;
const FEWEST_WAYS = 3;
/** Each way must have had so many tasks to break. */
const FEWEST_BROKEN = 3;
/** No divisor of usual numbers of steps, so that neighbours in the list of rungs are of different contents. */
const STRIDE = 29;

const FILES = import.meta.glob<{ readonly WRONG: WrongWays<unknown, unknown> }>(
  '../../src/activities/*/wrong-to-test.ts',
  { eager: true },
);

interface Named {
  readonly task: Task;
  /** Makes it again. */
  readonly name: string;
}

function waysOf(id: string): WrongWays<unknown, unknown> {
  return FILES[`../../src/activities/${id}/wrong-to-test.ts`]?.WRONG ?? {};
}

/** Tasks of every content, print and step; two of three have one more value changed, each value in its turn. */
function* tasksOf(activity: Activity, random: Random): Iterable<Named> {
  const rungs = rungsOf(activity);
  for (let place = 0; place < MOST_TASKS; place++) {
    const rung = rungs[(place * STRIDE) % rungs.length];
    if (!rung) throw new Error(`${activity.id}: expected at least one rung, got none`);
    const turn = place - Math.ceil(place / 3);
    const changed = place % 3 === 0 ? undefined : changedRung(activity, rungs, turn, random);
    const { values, style } = changed ?? rung;
    const seed = random.int(0, MAX_SEED);
    const task = activity.generate(values, randomFrom(seed), style);
    yield { task, name: JSON.stringify({ ...values, print: style.print, seed }) };
  }
}

/** Some rung with one value changed, where there is one that allows it; `turn` counts through all values. */
function changedRung(
  activity: Activity,
  rungs: readonly Rung[],
  turn: number,
  random: Random,
): Rung | undefined {
  const names = Object.keys(activity.parameters).filter((name) => name !== 'content');
  const changes = changesOf(activity, names[turn % names.length] ?? '');
  const change = changes[Math.floor(turn / names.length) % changes.length];
  for (const rung of random.shuffle(rungs)) {
    const { step, content, style } = rung;
    const read = activity.read(step, { content, ...change }, style);
    if (read.ok) return { ...rung, values: read.value };
  }
  return undefined;
}

const random = randomFrom(testSeed('tasks with one rule broken'));

test.each(ACTIVITY_IDS)('%s: every broken task is found out', (id) => {
  const activity = activityOf(id);
  const ways = Object.entries(waysOf(id));
  expect(ways.length).toBeGreaterThanOrEqual(FEWEST_WAYS);
  const broken = new Map(ways.map(([way]) => [way, 0]));
  const isEnough = () => [...broken.values()].every((count) => count >= FEWEST_BROKEN);
  let tried = 0;
  for (const { task, name } of tasksOf(activity, random.fork())) {
    if (tried++ >= TASKS && isEnough()) break;
    if (!activity.prove(task).proven) expect.unreachable(`not proven before: ${name}`);
    for (const [way, change] of ways) {
      const changed = change(task, random.fork());
      if (!changed) continue;
      const trouble = troubleWith(activity, changed);
      if (trouble) expect.unreachable(`${way}: ${trouble}, ${name}: ${JSON.stringify(changed)}`);
      broken.set(way, (broken.get(way) ?? 0) + 1);
    }
  }
  expect([...broken].filter(([, count]) => count < FEWEST_BROKEN)).toEqual([]);
});

/** What went wrong with a broken task: the schemas must let it through, and the solver must not. */
function troubleWith({ printed, answer, prove }: Activity, task: Task): string | undefined {
  const unread = printed.safeParse(task.printed).error ?? answer.safeParse(task.answer).error;
  if (unread) return `cannot be read, ${unread.message}`;
  return prove(task).proven ? 'is proven all the same' : undefined;
}
