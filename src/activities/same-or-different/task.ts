// What a same-or-different task is: its parameters, what stands on paper, and the answer.
import { z } from 'zod';
import { CONTENT_IDS, type Figure, figureSchema } from '../../figures/index.ts';
import { choice, type ValuesOf, whole, yesNo } from '../parameters.ts';

export const ID = 'same-or-different';

export const PARAMETERS = {
  content: choice(...CONTENT_IDS),
  response: choice('point', 'dot', 'ring', 'cross', 'signs'),
  pairs: whole(2, 8),
  /** In how many attributes of the content, from the first on, a pair may differ; each in one alone. */
  checked: whole(1, 3),
  /** How like each other the two of a different pair are. */
  likeness: choice('far', 'middle', 'near'),
  /** Whether what never differs within a pair changes from pair to pair. */
  idle: yesNo(),
  /** Whether pairs that differ in direction are mirror images, upright or at a slant. */
  mirrors: choice('none', 'left-right', 'slanted'),
};

export type PairValues = ValuesOf<typeof PARAMETERS>;
export type Response = PairValues['response'];

/** Two figures in a box of their own, the left one first. */
export type Pair = readonly [Figure, Figure];

export interface Printed {
  /** In reading order. */
  readonly pairs: readonly Pair[];
  /** What the child does; absent: points. */
  readonly response?: Response | undefined;
}

/** The places (0 upward, in reading order) of the pairs of which both are the same, rising. */
export type Answer = readonly number[];

/** More than any sheet holds; a limit against hostile files. */
const MOST_PAIRS = 12;

export const printedSchema: z.ZodType<Printed> = z.strictObject({
  pairs: z
    .array(z.tuple([figureSchema, figureSchema]))
    .min(1)
    .max(MOST_PAIRS),
  response: z.enum(PARAMETERS.response.values).optional(),
});

export const answerSchema: z.ZodType<Answer> = z
  .array(
    z
      .int()
      .min(0)
      .max(MOST_PAIRS - 1),
  )
  .max(MOST_PAIRS);
