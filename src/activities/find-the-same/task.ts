// What a find-the-same task is: its parameters, what stands on paper, and the answer.
import { z } from 'zod';
import { CONTENT_IDS, type Figure, figureSchema } from '../../figures/index.ts';
import { choice, type ValuesOf, whole, yesNo } from '../parameters.ts';

export const ID = 'find-the-same';

export const PARAMETERS = {
  content: choice(...CONTENT_IDS),
  response: choice('point', 'ring', 'join'),
  choices: whole(3, 8),
  /** Yes: no two wrong choices are alike. No: all of them are. */
  mixed: yesNo(),
  /** How many wrong choices differ from the model in one attribute alone; of one attribute nothing is meant. */
  nearMisses: whole(0, 7),
  /** How like each other the values of each attribute are. */
  likeness: choice('far', 'near'),
  /** Whether a wrong choice is the model's mirror image, upright or at a slant. */
  mirrors: choice('none', 'left-right', 'slanted'),
  layout: choice('row', 'grid'),
};

export type SameValues = ValuesOf<typeof PARAMETERS>;
export type Layout = SameValues['layout'];
export type Response = SameValues['response'];

export interface Printed {
  /** Stands in a frame of its own. */
  readonly model: Figure;
  /** In reading order. */
  readonly choices: readonly Figure[];
  /** How the choices stand; absent: in a grid. */
  readonly layout?: Layout | undefined;
  /** What the child does; absent: points. */
  readonly response?: Response | undefined;
}

/** The place (0 upward, in reading order) of the choice that is just like the model. */
export type Answer = number;

/** More than any sheet holds; a limit against hostile files. */
const MOST_CHOICES = 12;

export const printedSchema: z.ZodType<Printed> = z.strictObject({
  model: figureSchema,
  choices: z.array(figureSchema).min(1).max(MOST_CHOICES),
  layout: z.enum(PARAMETERS.layout.values).optional(),
  response: z.enum(PARAMETERS.response.values).optional(),
});

export const answerSchema: z.ZodType<Answer> = z
  .int()
  .min(0)
  .max(MOST_CHOICES - 1);
