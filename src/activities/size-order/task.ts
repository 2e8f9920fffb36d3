// What a size-order task is: its parameters, what stands on paper, and the answer.
import { z } from 'zod';
import {
  type ContentId,
  type Figure,
  figureSchema,
  SCRIPT_CONTENT_IDS,
} from '../../figures/index.ts';
import { choice, type ValuesOf, whole } from '../parameters.ts';

export const ID = 'size-order';

/** Contents whose figures come in sizes, or in numbers; of all others one figure stands for the whole content. */
export const CONTENTS = [
  'sizes',
  'colours-and-sizes',
  'shapes-and-sizes',
  'shapes-colours-and-sizes',
  'dot-quantities',
  'pictures',
  'capitals',
  'small-letters',
  'numerals',
  'signs',
  ...SCRIPT_CONTENT_IDS,
] as const satisfies readonly ContentId[];

export const PARAMETERS = {
  content: choice(...CONTENTS),
  response: choice('point', 'ring', 'dots', 'join', 'cut'),
  asked: choice('biggest', 'smallest', 'middle', 'order'),
  figures: whole(3, 5),
  /** How much bigger each is than the one before it in the order. */
  difference: choice('wide', 'plain', 'fine'),
  /** On one ground line, or some higher and some lower. */
  layout: choice('ground', 'loose'),
};

export type OrderValues = ValuesOf<typeof PARAMETERS>;
export type Content = OrderValues['content'];
export type Asked = OrderValues['asked'];
export type Response = OrderValues['response'];
export type Difference = OrderValues['difference'];

export interface Printed {
  /** From left to right. */
  readonly figures: readonly Figure[];
  /** What is to be found; absent: the order. */
  readonly asked?: Asked | undefined;
  /** What the child does; absent: points. */
  readonly response?: Response | undefined;
  /** How the figures stand; absent: on one ground line. */
  readonly layout?: OrderValues['layout'] | undefined;
}

/** Places (0 for the leftmost): the one asked for, or all from the smallest, or fewest, to the biggest. */
export type Answer = readonly number[];

/** More than a row across a sheet holds; a limit against hostile files. */
const MOST_FIGURES = 8;

export const printedSchema: z.ZodType<Printed> = z.strictObject({
  figures: z.array(figureSchema).min(1).max(MOST_FIGURES),
  asked: z.enum(PARAMETERS.asked.values).optional(),
  response: z.enum(PARAMETERS.response.values).optional(),
  layout: z.enum(PARAMETERS.layout.values).optional(),
});

/** Whether one figure is to be found, and not the order of all. */
export function isOneAsked({ asked = 'order' }: Printed): boolean {
  return asked !== 'order';
}

export const answerSchema: z.ZodType<Answer> = z
  .array(
    z
      .int()
      .min(0)
      .max(MOST_FIGURES - 1),
  )
  .min(1)
  .max(MOST_FIGURES);
