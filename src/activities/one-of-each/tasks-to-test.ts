// Builds values and tasks for the tests of one-of-each.
import { type Random, randomFrom } from '../../base/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { generate } from './generate.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { type Answer, PARAMETERS, type Printed, type SquareValues } from './task.ts';
import { emptyRange } from './ways.ts';

export const COLOUR: PrintStyle = { print: 'colour' };
const STYLES: readonly PrintStyle[] = [COLOUR, { print: 'grey' }];

export interface Made {
  readonly values: SquareValues;
  readonly printed: Printed;
  readonly answer: Answer;
  readonly name: string;
}

/** The values of a step (1 upward) with some of them changed. */
export function valuesAt(step: number, changes: Partial<SquareValues> = {}): SquareValues {
  const rung = LADDER[step - 1];
  if (!rung) throw new Error(`no step ${step}`);
  return { ...rung.values, ...changes };
}

export function taskOf(values: SquareValues, seed: number): Made {
  const { printed, answer } = generate(values, randomFrom(seed), COLOUR);
  return { values, printed, answer, name: `seed ${seed}: ${JSON.stringify(values)}` };
}

/** Tasks of values drawn from the whole range, those that are refused left out. */
export function makeTasks(count: number, seed: number): readonly Made[] {
  const random = randomFrom(seed);
  const made: Made[] = [];
  while (made.length < count) {
    const values = anyValues(random);
    const style = random.pick(STYLES);
    if (limitsOf(values, style).length > 0) continue;
    const { printed, answer } = generate(values, random.fork(), style);
    made.push({ values, printed, answer, name: `seed ${seed}: ${JSON.stringify(values)}` });
  }
  return made;
}

/** Any values; empty cells mostly as many as there can be of the kind. */
function anyValues(random: Random): SquareValues {
  const order = random.int(PARAMETERS.order.min, PARAMETERS.order.max);
  const kind = {
    order,
    boxes: order === 4 && random.int(0, 1) === 1,
    logic: random.pick(PARAMETERS.logic.values),
    chain: random.int(0, 1) === 1,
  };
  const { min, max } = emptyRange(kind) ?? PARAMETERS.empty;
  return {
    ...kind,
    content: random.pick(PARAMETERS.content.values),
    response: random.pick(PARAMETERS.response.values),
    empty: random.int(min, max),
    stickerMm: random.pick(PARAMETERS.stickerMm.values),
  };
}
