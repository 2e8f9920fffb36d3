// Measures making, proving and printing as ratios within one run: `npm run bench`.
import { createHash } from 'node:crypto';
import { cpus } from 'node:os';
import { ACTIVITY_IDS, activityOf } from '../src/activities/index.ts';
import { randomFrom } from '../src/base/index.ts';
import { measureAgainstASolver } from './against-a-solver.ts';
import { measureLongTasks } from './long-tasks.ts';
import { measurePress } from './press.ts';
import { measureRedraw } from './redraw.ts';
import { measureSizes } from './sizes.ts';

const TASKS = 400;
const COLOUR = { print: 'colour' } as const;

export async function main(): Promise<void> {
  console.log(`npm run bench · Node ${process.version} · ${cpus().length} cores`);
  measureTasks();
  measureAgainstASolver();
  await measurePress();
  measureSizes();
  await measureRedraw();
  await measureLongTasks();
}

/** For each activity the median task over its whole ladder, against hashing one mebibyte in the same run. */
function measureTasks(): void {
  const block = Buffer.alloc(2 ** 20, 7);
  const hash = medianMs(() => createHash('sha256').update(block).digest(), 50);
  console.log(`\nmaking and proving one task (reference: SHA-256 of 1 MiB, ${hash.toFixed(2)} ms)`);
  for (const id of ACTIVITY_IDS) {
    const activity = activityOf(id);
    const times: number[] = [];
    for (let seed = 0; seed < TASKS; seed++) {
      const step = 1 + (seed % activity.ladder.length);
      const values = activity.read(step, {}, COLOUR);
      if (!values.ok) throw new Error(`${id}, step ${step} is refused`);
      times.push(
        medianMs(() => {
          const task = activity.generate(values.value, randomFrom(seed), COLOUR);
          if (!activity.prove(task).proven) throw new Error(`${id}, step ${step}, seed ${seed}`);
        }, 1),
      );
    }
    const median = times.sort((one, other) => one - other)[TASKS / 2] ?? Number.NaN;
    console.log(
      `  ${id.padEnd(14)} ${median.toFixed(2)} ms a task, ${(median / hash).toFixed(2)} × the reference`,
    );
  }
}

function medianMs(work: () => unknown, rounds: number): number {
  const times = Array.from({ length: rounds }, () => {
    const start = process.hrtime.bigint();
    work();
    return Number(process.hrtime.bigint() - start) / 1e6;
  });
  return times.sort((one, other) => one - other)[Math.floor(rounds / 2)] ?? Number.NaN;
}
