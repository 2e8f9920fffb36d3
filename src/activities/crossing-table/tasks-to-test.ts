// Builds values and tasks for the tests of crossing-table.
import { type Random, randomFrom } from '../../base/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { generate } from './generate.ts';
import { fewestGiven } from './givens.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { type Answer, PARAMETERS, type Printed, type TableValues } from './task.ts';

export const COLOUR: PrintStyle = { print: 'colour' };
const STYLES: readonly PrintStyle[] = [COLOUR, { print: 'grey' }];

export interface Made {
  readonly values: TableValues;
  readonly printed: Printed;
  readonly answer: Answer;
  readonly name: string;
}

/** The values of a step (1 upward) with some of them changed. */
export function valuesAt(step: number, changes: Partial<TableValues> = {}): TableValues {
  const rung = LADDER[step - 1];
  if (!rung) throw new Error(`no step ${step}`);
  return { ...rung.values, ...changes };
}

export function taskOf(values: TableValues, seed: number): Made {
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

function anyValues(random: Random): TableValues {
  const shape = {
    rows: random.int(PARAMETERS.rows.min, PARAMETERS.rows.max),
    columns: random.int(PARAMETERS.columns.min, PARAMETERS.columns.max),
    heads: random.pick(PARAMETERS.heads.values),
  };
  return {
    ...shape,
    content: random.pick(PARAMETERS.content.values),
    response: random.pick(PARAMETERS.response.values),
    empty: random.int(1, shape.rows * shape.columns - fewestGiven(shape)),
    extra: random.int(PARAMETERS.extra.min, PARAMETERS.extra.max),
  };
}
