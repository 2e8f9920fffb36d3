// Makes and proves very many tasks, over every activity, content, step and print, on all processors:
// `npm run prove [tasks] [seed] [threads]`.
import { createHash } from 'node:crypto';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import { ACTIVITY_IDS, type ActivityId } from '../src/activities/index.ts';
import { MAX_SEED, randomFrom } from '../src/base/index.ts';
import { runPool } from '../src/cli/worker-pool.ts';
import type { Part, Proven } from './prove-part.ts';
import { addTo, noTimings, quantileMs, type Timings } from './timings.ts';

const USUAL_TASKS = 200_000;
/** Small enough that threads end at about one time, and that progress is seen. */
const PART_TASKS = 1000;
const PROGRESS_MS = 20_000;
const RUN = join(import.meta.dirname, 'run.mjs');

/** Of one activity, all its parts together. */
interface Tally {
  readonly activity: ActivityId;
  readonly timings: Timings;
  rungs: number;
  tasks: number;
  notCertain: number;
  failed: number;
}

export interface Summary {
  readonly tallies: readonly Readonly<Tally>[];
  /** What is wrong, in the order of the parts. */
  readonly shown: readonly string[];
  /** SHA-256 of the hashes of all parts: the same tasks were made if it is the same. */
  readonly hash: string;
}

export async function main([
  tasks = String(USUAL_TASKS),
  seed = '1',
  threads = String(availableParallelism()),
]: readonly string[]): Promise<void> {
  const asked = {
    tasks: Number(tasks),
    seed: Number(seed),
    threads: Number(threads),
    activities: ACTIVITY_IDS,
  };
  if (!(asked.tasks > 0)) throw new Error(`prove › tasks: expected a number above 0, got ${tasks}`);
  if (!(asked.threads >= 1)) throw new Error(`prove › threads: expected 1 or more, got ${threads}`);
  console.log(`making and proving ${tasks} tasks, seed ${seed} (npm run prove ${tasks} ${seed})`);
  const start = Date.now();
  let next = PROGRESS_MS;
  const summary = await proveMany(asked, (done) => {
    const passed = Date.now() - start;
    if (passed < next) return;
    next = passed + PROGRESS_MS;
    console.log(`  ${done} of ${tasks} after ${Math.round(passed / 1000)} s`);
  });
  const [seconds, peakMiB] = [(Date.now() - start) / 1000, process.resourceUsage().maxRSS / 1024];
  console.log(`${inWords(summary)}\n${seconds.toFixed(0)} s, ${peakMiB.toFixed(0)} MiB at most`);
  const isBad = summary.tallies.some(({ notCertain, failed }) => notCertain + failed > 0);
  process.exitCode = isBad ? 1 : 0;
}

export interface Asked {
  readonly tasks: number;
  readonly seed: number;
  readonly threads: number;
  readonly activities: readonly ActivityId[];
}

/**
 * The same tasks whatever the number of threads; about as many of each activity. `onProgress` is told how many tasks
 * are done. What is kept grows with what is wrong alone, and by a hash for each part.
 */
export async function proveMany(
  asked: Asked,
  onProgress: (done: number) => void,
): Promise<Summary> {
  const parts = partsOf(asked);
  const tallies = new Map(asked.activities.map((id) => [id, noTally(id)]));
  const found = new Map<number, Pick<Proven, 'shown' | 'hash'>>();
  let done = 0;
  await onThreads(parts, asked.threads, (number, part, { shown, hash, ...proven }) => {
    found.set(number, { shown, hash });
    add(tallies.get(part.activity), part, proven);
    done += part.tasks;
    onProgress(done);
  });
  const inOrder = parts.flatMap((_, number) => found.get(number) ?? []);
  const hash = createHash('sha256').update(inOrder.map((each) => each.hash).join());
  return {
    tallies: [...tallies.values()],
    shown: inOrder.flatMap(({ shown }) => shown),
    hash: hash.digest('hex'),
  };
}

/** The parts of every activity, each with a seed of its own. */
function partsOf({ tasks, seed, activities }: Asked): readonly Part[] {
  const random = randomFrom(seed);
  const share = Math.ceil(tasks / activities.length);
  return activities.flatMap((activity) =>
    Array.from({ length: Math.ceil(share / PART_TASKS) }, (_, number) => {
      const from = number * PART_TASKS;
      const own = Math.min(PART_TASKS, share - from);
      return { activity, from, tasks: own, seed: random.int(0, MAX_SEED) };
    }),
  );
}

/** Hands each thread a part, and the next one as soon as it is done; rejects where a thread ends in the middle of one. */
async function onThreads(
  parts: readonly Part[],
  threads: number,
  onProven: (number: number, part: Part, proven: Proven) => void,
): Promise<void> {
  let next = 0;
  let fault: string | undefined;
  const worker = join(import.meta.dirname, 'prove-worker.ts');
  await runPool<Numbered, Proven>(
    Math.min(threads, parts.length),
    () => new Worker(RUN, { argv: [worker] }),
    {
      next: () => {
        const part = fault === undefined ? parts[next] : undefined;
        return part && { number: next++, ...part };
      },
      done: ({ number, ...part }, proven) => onProven(number, part, proven),
      lost: ({ activity, from }, reason) => {
        fault ??= `prove › ${activity} from ${from}: ${reason ?? 'its thread ended'}`;
      },
    },
  );
  if (fault !== undefined) throw new Error(fault);
}

interface Numbered extends Part {
  readonly number: number;
}

function noTally(activity: ActivityId): Tally {
  return { activity, timings: noTimings(), rungs: 0, tasks: 0, notCertain: 0, failed: 0 };
}

function add(
  tally: Tally | undefined,
  { tasks }: Part,
  { rungs, notCertain, failed, timings }: Omit<Proven, 'shown' | 'hash'>,
): void {
  if (!tally) return;
  tally.rungs = rungs;
  tally.tasks += tasks;
  tally.notCertain += notCertain;
  tally.failed += failed;
  addTo(tally.timings, timings);
}

/** A table, what is wrong, and the sum. */
function inWords({ tallies, shown, hash }: Summary): string {
  const rows = tallies.map((tally) => [
    tally.activity,
    ...[tally.rungs, tally.tasks, tally.notCertain, tally.failed].map(String),
    quantileMs(tally.timings, 0.5).toFixed(3),
    quantileMs(tally.timings, 0.99).toFixed(3),
  ]);
  const heads = ['activity', 'rungs', 'tasks', 'not certain', 'failed', 'median ms', '99 % ms'];
  const total = (count: (tally: Tally) => number) =>
    tallies.reduce((sum, tally) => sum + count(tally), 0);
  const bad = total(({ notCertain, failed }) => notCertain + failed);
  return [
    '',
    ...[heads, ...rows].map((row) => row.map((cell, at) => padded(cell, at)).join('  ')),
    ...shown.map((line) => `  ${line}`),
    '',
    `${total(({ tasks }) => tasks)} tasks of ${total(({ rungs }) => rungs)} rungs: ${bad === 0 ? 'all certain' : `${bad} bad`}`,
    `all tasks together: SHA-256 ${hash}`,
  ].join('\n');
}

const WIDTHS = [18, 5, 8, 11, 6, 9, 7];

function padded(cell: string, column: number): string {
  const width = WIDTHS[column] ?? 0;
  return column === 0 ? cell.padEnd(width) : cell.padStart(width);
}
