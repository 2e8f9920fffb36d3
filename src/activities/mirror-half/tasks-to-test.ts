// Values and tasks for the tests of mirror-half.
import { type Random, randomFrom } from '../../base/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { generate } from './generate.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { type Answer, type MirrorValues, PARAMETERS, type Printed } from './task.ts';

export const COLOUR: PrintStyle = { print: 'colour' };
export const GREY: PrintStyle = { print: 'grey' };

export interface Made {
  readonly values: MirrorValues;
  readonly printed: Printed;
  readonly answer: Answer;
  readonly name: string;
}

/** The values of a step (1 upward) with some of them changed. */
export function valuesAt(step: number, changes: Partial<MirrorValues> = {}): MirrorValues {
  const rung = LADDER[step - 1];
  if (!rung) throw new Error(`no step ${step}`);
  return { ...rung.values, ...changes };
}

/** Any values, each within its own range; they may not go together. */
function anyValues(random: Random): MirrorValues {
  const values = Object.entries(PARAMETERS).map(([name, spec]) => [
    name,
    spec.kind === 'whole' ? random.int(spec.min, spec.max) : random.pick<string>(spec.values),
  ]);
  return Object.fromEntries(values);
}

/** `count` tasks of values drawn from the whole range, those that are refused left out. */
export function anyTasks(count: number, seed: number): readonly Made[] {
  const random = randomFrom(seed);
  const tasks: Made[] = [];
  while (tasks.length < count) {
    const style = random.pick([COLOUR, GREY]);
    const values = anyValues(random);
    if (limitsOf(values, style).length > 0) continue;
    tasks.push(taskOf(values, random.int(0, 1e9), style));
  }
  return tasks;
}

export function taskOf(values: MirrorValues, seed: number, style: PrintStyle = COLOUR): Made {
  const { printed, answer } = generate(values, randomFrom(seed), style);
  return { values, printed, answer, name: JSON.stringify({ ...values, seed, ...style }) };
}
