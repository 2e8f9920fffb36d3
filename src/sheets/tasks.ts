// The tasks of one sheet: drawn from its seed, all different.
import type { Activity, Task, Values } from '../activities/index.ts';
import { type Random, randomFrom } from '../base/index.ts';
import type { PrintStyle } from '../page/index.ts';
import { telling } from './defect.ts';
import { mostAbout, NAME_DRAWS } from './name-tasks.ts';

/** Repeated tasks in a row after which the values are taken to hold no further one. */
const MOST_MISSES = 60;

/**
 * Up to `count` different tasks: fewer where the values allow no more. The first tasks of a seed
 * are the same whatever the count.
 */
export function differentTasks(
  activity: Activity,
  values: Values,
  seed: number,
  style: PrintStyle,
  count: number,
): readonly Task[] {
  const random = randomFrom(seed);
  const seen = new Set<string>();
  const tasks: Task[] = [];
  let misses = 0;
  while (tasks.length < count && misses < MOST_MISSES) {
    const task = telling(
      () => `${activity.id}, seed ${seed}, values ${JSON.stringify(values)}`,
      () => taskFrom(activity, values, random, style),
    );
    const printed = JSON.stringify(task.printed);
    if (seen.has(printed)) misses += 1;
    else {
      seen.add(printed);
      tasks.push(task);
      misses = 0;
    }
  }
  return tasks;
}

function taskFrom(activity: Activity, values: Values, random: Random, style: PrintStyle): Task {
  const { letters } = style;
  const draw = () => activity.generate(values, random.fork(), style);
  if (letters === undefined) return draw();
  return mostAbout(activity, [draw(), ...Array.from({ length: NAME_DRAWS - 1 }, draw)], letters);
}
