// Builds values and tasks for the tests of missing-part.
import { type Random, randomFrom } from '../../base/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { generate } from './generate.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { type Answer, PARAMETERS, type PartValues, type Printed } from './task.ts';

export const COLOUR: PrintStyle = { print: 'colour' };
const GREY: PrintStyle = { print: 'grey' };

export interface Made {
  readonly values: PartValues;
  readonly printed: Printed;
  readonly answer: Answer;
  readonly name: string;
}

/** The values of a step (1 upward) with some of them changed. */
export function valuesAt(step: number, changes: Partial<PartValues> = {}): PartValues {
  const rung = LADDER[step - 1];
  if (!rung) throw new Error(`no step ${step}`);
  return { ...rung.values, ...changes };
}

/** Any values, each within its own range; they may not go together. */
function anyValues(random: Random): PartValues {
  return {
    content: random.pick(PARAMETERS.content.values),
    response: random.pick(PARAMETERS.response.values),
    rule: random.pick(PARAMETERS.rule.values),
    second: random.int(0, 1) === 0 ? 'same' : random.pick(PARAMETERS.second.values),
    field: random.int(PARAMETERS.field.min, PARAMETERS.field.max),
    hole: random.pick(PARAMETERS.hole.values),
    choices: random.int(PARAMETERS.choices.min, PARAMETERS.choices.max),
    likeness: random.pick(PARAMETERS.likeness.values),
  };
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

export function taskOf(values: PartValues, seed: number, style: PrintStyle = COLOUR): Made {
  const { printed, answer } = generate(values, randomFrom(seed), style);
  return { values, printed, answer, name: JSON.stringify({ ...values, seed, ...style }) };
}

/** Where the hole begins. */
export function holeOf({ printed }: Made): number {
  return printed.field.indexOf(null);
}

/** The position of the right piece among those offered. */
export function rightOf({ printed, answer }: Made): number {
  const wanted = JSON.stringify(answer.figures);
  return (printed.offered ?? []).findIndex((piece) => JSON.stringify(piece) === wanted);
}
