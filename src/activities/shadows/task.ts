// What a shadows task is: its parameters, what stands on paper, and the answer.
import { z } from 'zod';
import {
  type ContentId,
  type Figure,
  figureSchema,
  SCRIPT_CONTENT_IDS,
} from '../../figures/index.ts';
import { choice, type ValuesOf, whole } from '../parameters.ts';

export const ID = 'shadows';

/** Contents whose figures differ in outline; colours, textures, sizes and numbers of dots leave no shadow of their own. */
export const SHADOW_CONTENTS = [
  'pictures',
  'shapes',
  'directions',
  'capitals',
  'small-letters',
  'numerals',
  'signs',
  ...SCRIPT_CONTENT_IDS,
] as const satisfies readonly ContentId[];

export const PARAMETERS = {
  content: choice(...SHADOW_CONTENTS),
  response: choice('point', 'ring', 'join'),
  /** How many figures look for their shadow. */
  models: whole(1, 5),
  /** How many shadows there are; those of no model are wrong for all. */
  shadows: whole(2, 8),
  /** How like each other the outlines are. */
  likeness: choice('far', 'middle', 'near'),
  /** How large the shadows are beside their figures. */
  resize: choice('same', 'smaller', 'bigger', 'mixed'),
  /** Whether a wrong shadow is a mirror image of the model, upright or at a slant. */
  mirrors: choice('none', 'left-right', 'slanted'),
};

export type ShadowValues = ValuesOf<typeof PARAMETERS>;
export type Response = ShadowValues['response'];

export interface Printed {
  /** In colour or in outline, each in a frame of its own, from left to right. */
  readonly models: readonly Figure[];
  /** Filled with ink, in reading order. */
  readonly shadows: readonly Figure[];
  /** What the child does; absent: points. */
  readonly response?: Response | undefined;
}

/** For each model the place (0 upward, in reading order) of its shadow. */
export type Answer = readonly number[];

/** More than any sheet holds; a limit against hostile files. */
const MOST_FIGURES = 8;

export const printedSchema: z.ZodType<Printed> = z.strictObject({
  models: z.array(figureSchema).min(1).max(MOST_FIGURES),
  shadows: z.array(figureSchema).min(1).max(MOST_FIGURES),
  response: z.enum(PARAMETERS.response.values).optional(),
});

export const answerSchema: z.ZodType<Answer> = z
  .array(
    z
      .int()
      .min(0)
      .max(MOST_FIGURES - 1),
  )
  .min(1)
  .max(MOST_FIGURES);
