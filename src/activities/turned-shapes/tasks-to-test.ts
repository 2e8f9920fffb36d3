// Values and tasks for the tests of turned-shapes.
import { type Random, randomFrom } from '../../base/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { generate } from './generate.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { type Answer, PARAMETERS, type Printed, type TurnedValues } from './task.ts';

export const COLOUR: PrintStyle = { print: 'colour' };
export const GREY: PrintStyle = { print: 'grey' };

export interface Made {
  readonly values: TurnedValues;
  readonly printed: Printed;
  readonly answer: Answer;
  readonly right: Printed['choices'];
  readonly wrong: Printed['choices'];
  readonly name: string;
}

/** The values of a step (1 upward) with some of them changed. */
export function valuesAt(step: number, changes: Partial<TurnedValues> = {}): TurnedValues {
  const rung = LADDER[step - 1];
  if (!rung) throw new Error(`no step ${step}`);
  return { ...rung.values, ...changes };
}

/** Any values, each within its own range; they may not go together. */
function anyValues(random: Random): TurnedValues {
  const values = Object.entries(PARAMETERS).map(([name, spec]) => {
    if (spec.kind === 'whole') return [name, random.int(spec.min, spec.max)];
    if (spec.kind === 'yes-no') return [name, random.int(0, 1) === 1];
    return [name, random.pick<string>(spec.values)];
  });
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

export function taskOf(values: TurnedValues, seed: number, style: PrintStyle = COLOUR): Made {
  const { printed, answer } = generate(values, randomFrom(seed), style);
  const right = printed.choices.filter((_, place) => answer.includes(place));
  const wrong = printed.choices.filter((_, place) => !answer.includes(place));
  const name = JSON.stringify({ ...values, seed, ...style });
  return { values, printed, answer, right, wrong, name };
}
