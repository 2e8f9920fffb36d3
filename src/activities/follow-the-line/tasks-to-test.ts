// Builds values and tasks for the tests of follow-the-line.
import { type Random, randomFrom } from '../../base/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { generate } from './generate.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { type Answer, type LineValues, PARAMETERS, type Printed } from './task.ts';

export const COLOUR: PrintStyle = { print: 'colour' };
export const GREY: PrintStyle = { print: 'grey' };

export interface Made {
  readonly values: LineValues;
  readonly printed: Printed;
  readonly answer: Answer;
  readonly name: string;
}

/** The values of a step (1 upward) with some of them changed. */
export function valuesAt(step: number, changes: Partial<LineValues> = {}): LineValues {
  const rung = LADDER[step - 1];
  if (!rung) throw new Error(`no step ${step}`);
  return { ...rung.values, ...changes };
}

export function taskOf(values: LineValues, seed: number, style: PrintStyle = COLOUR): Made {
  const name = JSON.stringify({ ...values, seed, ...style });
  return { values, name, ...generate(values, randomFrom(seed), style) };
}

/** Any values, each within its own range; they may not go together. */
function anyValues(random: Random): LineValues {
  const { lines, crossings } = PARAMETERS;
  return {
    content: random.pick(PARAMETERS.content.values),
    response: random.pick(PARAMETERS.response.values),
    lines: random.int(lines.min, lines.max),
    crossings: random.int(crossings.min, crossings.max),
    lineColours: random.pick(PARAMETERS.lineColours.values),
    direction: random.pick(PARAMETERS.direction.values),
    stickerMm: random.pick(PARAMETERS.stickerMm.values),
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
