// Builds values and tasks for the tests of by-key.
import { MAX_SEED, type Random, randomFrom } from '../../base/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { generate } from './generate.ts';
import { LADDER } from './ladder.ts';
import { limits } from './limits.ts';
import { CONTENTS, type Parameters, RESPONSE_KINDS, VARIES } from './parameters.ts';
import type { Answer, Printed } from './task.ts';

export const COLOUR: PrintStyle = { print: 'colour' };
export const GREY: PrintStyle = { print: 'grey' };

export interface Made {
  readonly printed: Printed;
  readonly answer: Answer;
}

/** The first `count` of a list of seeds all over the range. */
export function seeds(count: number): readonly number[] {
  const stream = randomFrom(20261125);
  return Array.from({ length: count }, () => stream.int(0, MAX_SEED));
}

/** The values of a step (1 upward) with some of them changed. */
export function valuesAt(step: number, changes: Partial<Parameters> = {}): Parameters {
  const rung = LADDER[step - 1];
  if (!rung) throw new Error(`no step ${step}`);
  return { ...rung.values, ...changes };
}

/** Any values, each within its own range; they may not go together. */
export function anyValues(random: Random): Parameters {
  return {
    content: random.pick(CONTENTS),
    response: random.pick(RESPONSE_KINDS),
    entries: random.int(2, 6),
    items: random.int(6, 24),
    vary: random.int(0, 1) === 0 ? 'none' : random.pick(VARIES),
    balanced: random.int(0, 2) > 0,
    leftRight: random.int(0, 1) === 0,
    stickerMm: random.int(12, 20),
  };
}

/** `count` values that go together and hold for `wanted`, each with a seed to make its task from. */
export function goodValues(
  count: number,
  style: PrintStyle,
  wanted: (values: Parameters) => boolean = () => true,
): readonly (readonly [seed: number, values: Parameters])[] {
  const tried = seeds(1200 + 200 * count).map(
    (seed) => [seed, anyValues(randomFrom(seed))] as const,
  );
  const good = tried.filter(([, values]) => wanted(values) && limits(values, style).length === 0);
  if (good.length < count) throw new Error(`only ${good.length} of ${count} values found`);
  return good.slice(0, count);
}

export function made(values: Parameters, seed: number, style: PrintStyle = COLOUR): Made {
  return generate(values, randomFrom(seed), style);
}
