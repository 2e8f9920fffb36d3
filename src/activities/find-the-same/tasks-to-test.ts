// Builds values and tasks for the tests of find-the-same.
import { type Random, randomFrom } from '../../base/index.ts';
import { attributesOf, CONTENT_IDS } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { generate } from './generate.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { type Answer, PARAMETERS, type Printed, type SameValues } from './task.ts';

export const COLOUR: PrintStyle = { print: 'colour' };
export const GREY: PrintStyle = { print: 'grey' };

export interface Made {
  readonly values: SameValues;
  readonly printed: Printed;
  readonly answer: Answer;
  readonly wrong: Printed['choices'];
  readonly name: string;
}

/** The values of a step (1 upward) with some of them changed. */
export function valuesAt(step: number, changes: Partial<SameValues> = {}): SameValues {
  const rung = LADDER[step - 1];
  if (!rung) throw new Error(`no step ${step}`);
  return { ...rung.values, ...changes };
}

/** Contents of two or three attributes, which the numbers of near misses are about. */
const JOINED = CONTENT_IDS.filter((content) => attributesOf(content).length > 1);

/** Any values, each within its own range; they may not go together. */
function anyValues(random: Random): SameValues {
  const isJoined = random.int(0, 1) === 0;
  return {
    content: random.pick(isJoined ? JOINED : CONTENT_IDS),
    response: random.pick(PARAMETERS.response.values),
    choices: random.int(PARAMETERS.choices.min, PARAMETERS.choices.max),
    mixed: random.int(0, 3) > 0,
    nearMisses: random.int(0, PARAMETERS.nearMisses.max),
    likeness: random.pick(PARAMETERS.likeness.values),
    mirrors: random.int(0, 2) > 0 ? 'none' : random.pick(PARAMETERS.mirrors.values),
    layout: random.pick(PARAMETERS.layout.values),
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

export function taskOf(values: SameValues, seed: number, style: PrintStyle = COLOUR): Made {
  const { printed, answer } = generate(values, randomFrom(seed), style);
  const wrong = printed.choices.filter((_, place) => place !== answer);
  return { values, printed, answer, wrong, name: JSON.stringify({ ...values, seed, ...style }) };
}
