// Builds values and tasks for the tests of size-order.
import { type Random, randomFrom } from '../../base/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { generate } from './generate.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { type Answer, type OrderValues, PARAMETERS, type Printed } from './task.ts';

export const COLOUR: PrintStyle = { print: 'colour' };
export const GREY: PrintStyle = { print: 'grey' };

export interface Made {
  readonly values: OrderValues;
  readonly printed: Printed;
  readonly answer: Answer;
  readonly name: string;
}

/** The values of a step (1 upward) with some of them changed. */
export function valuesAt(step: number, changes: Partial<OrderValues> = {}): OrderValues {
  const rung = LADDER[step - 1];
  if (!rung) throw new Error(`no step ${step}`);
  return { ...rung.values, ...changes };
}

export function taskOf(values: OrderValues, seed: number, style: PrintStyle = COLOUR): Made {
  const made = generate(values, randomFrom(seed), style);
  return { ...made, values, name: JSON.stringify({ ...values, seed, ...style }) };
}

function anyValues(random: Random): OrderValues {
  return {
    content: random.pick(PARAMETERS.content.values),
    response: random.pick(PARAMETERS.response.values),
    asked: random.pick(PARAMETERS.asked.values),
    figures: random.int(PARAMETERS.figures.min, PARAMETERS.figures.max),
    difference: random.pick(PARAMETERS.difference.values),
    layout: random.pick(PARAMETERS.layout.values),
  };
}

/** `count` tasks of values drawn from the whole range, those that are refused left out. */
export function anyTasks(count: number, seed: number): readonly Made[] {
  const random = randomFrom(seed);
  const tasks: Made[] = [];
  while (tasks.length < count) {
    const values = anyValues(random);
    if (limitsOf(values, COLOUR).length > 0) continue;
    tasks.push(taskOf(values, random.int(0, 1e9), random.pick([COLOUR, GREY])));
  }
  return tasks;
}
