// Builds values and tasks for the tests of tangle.
import { type Random, randomFrom } from '../../base/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { generate } from './generate.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { type Answer, PARAMETERS, type Printed, type TangleValues } from './task.ts';

export const COLOUR: PrintStyle = { print: 'colour' };

export interface Made {
  readonly values: TangleValues;
  readonly printed: Printed;
  readonly answer: Answer;
  readonly name: string;
}

/** The values of a step (1 upward) with some of them changed. */
export function valuesAt(step: number, changes: Partial<TangleValues> = {}): TangleValues {
  const rung = LADDER[step - 1];
  if (!rung) throw new Error(`no step ${step}`);
  return { ...rung.values, ...changes };
}

export function taskOf(values: TangleValues, seed: number): Made {
  const name = JSON.stringify({ ...values, seed });
  return { values, name, ...generate(values, randomFrom(seed), COLOUR) };
}

/** Any values, each within its own range; they may not go together. */
function anyValues(random: Random): TangleValues {
  const { shown, absent } = PARAMETERS;
  return {
    content: random.pick(PARAMETERS.content.values),
    response: random.pick(PARAMETERS.response.values),
    shown: random.int(shown.min, shown.max),
    absent: random.int(absent.min, absent.max),
    overlap: random.pick(PARAMETERS.overlap.values),
  };
}

/** `count` tasks of values drawn from the whole range, those that are refused left out. */
export function anyTasks(count: number, seed: number): readonly Made[] {
  const random = randomFrom(seed);
  const tasks: Made[] = [];
  while (tasks.length < count) {
    const values = anyValues(random);
    if (limitsOf(values, COLOUR).length > 0) continue;
    tasks.push(taskOf(values, random.int(0, 1e9)));
  }
  return tasks;
}
