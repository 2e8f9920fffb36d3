// What a look-and-remember task is: its parameters, what stands on paper, and the answer.
import { z } from 'zod';
import { CONTENT_IDS, type Figure, figureSchema } from '../../figures/index.ts';
import { COLOUR_NAMES, type ColourName } from '../../palette/index.ts';
import { choice, type ValuesOf, whole } from '../parameters.ts';

export const ID = 'look-and-remember';

/** Diameter in mm of the stickers that are put on figures: one that is sold widely; common practice, no source. */
export const STICKER_MM = 13;

export const PARAMETERS = {
  content: choice(...CONTENT_IDS),
  response: choice('point', 'sticker', 'ring', 'cross'),
  /** How many figures are in the frame. */
  set: whole(1, 5),
  /** Whether all of them come again below, or half of them. */
  again: choice('all', 'some'),
  choices: whole(3, 10),
  /** How many wrong choices differ from a figure of the frame in one attribute alone. */
  nearMisses: whole(0, 9),
  /** How like each other the values of each attribute are. */
  likeness: choice('far', 'near'),
  layout: choice('rows', 'loose'),
};

export type RememberValues = ValuesOf<typeof PARAMETERS>;
export type Response = RememberValues['response'];

export interface Printed {
  /** In the frame above the fold, in reading order. */
  readonly set: readonly Figure[];
  /** Below the fold, in reading order. */
  readonly choices: readonly Figure[];
  /** How the choices stand; absent: in rows. */
  readonly layout?: RememberValues['layout'] | undefined;
  /** What the child does; absent: points. */
  readonly response?: Response | undefined;
  /** Of the stickers to be placed; absent: red. */
  readonly stickerColour?: ColourName | undefined;
}

/** The places (0 upward, rising) of the choices that were in the frame. */
export type Answer = readonly number[];

/** More than any sheet holds; a limit against hostile files. */
const MOST_CHOICES = 16;

const figures = z.array(figureSchema).min(1).max(MOST_CHOICES);

export const printedSchema: z.ZodType<Printed> = z.strictObject({
  set: figures,
  choices: figures,
  layout: z.enum(PARAMETERS.layout.values).optional(),
  response: z.enum(PARAMETERS.response.values).optional(),
  stickerColour: z.enum(COLOUR_NAMES).optional(),
});

export const answerSchema: z.ZodType<Answer> = z
  .array(
    z
      .int()
      .min(0)
      .max(MOST_CHOICES - 1),
  )
  .max(MOST_CHOICES);
