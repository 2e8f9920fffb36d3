// What an odd-one-out task is: its parameters, what stands on paper, and the answer.
import { z } from 'zod';
import { ATTRIBUTES, CONTENT_IDS, type Figure, figureSchema } from '../../figures/index.ts';
import { COLOUR_NAMES, type ColourName } from '../../palette/index.ts';
import { choice, type ValuesOf, whole, yesNo } from '../parameters.ts';

export const ID = 'odd-one-out';

export const PARAMETERS = {
  /** What differs; `picture-kinds`: all pictures differ, and one shows another kind of thing. */
  content: choice(...CONTENT_IDS, 'picture-kinds'),
  /** In the order in which hands learn them. */
  response: choice('point', 'sticker', 'ring', 'cross'),
  figures: whole(3, 8),
  /** The attribute in which the odd one stands alone; `any`: one of those that the content looks at. */
  odd: choice('any', ...ATTRIBUTES),
  /** Yes: something else changes too and singles out no figure. */
  vary: yesNo(),
  /** How different the odd one is; near is still fair. */
  likeness: choice('far', 'near'),
  layout: choice('row', 'grid', 'loose'),
  /** Yes: what points, points left and right, or slants two ways like in a mirror. */
  mirrors: yesNo(),
};

export type Parameters = ValuesOf<typeof PARAMETERS>;
export type Content = Parameters['content'];
export type Response = Parameters['response'];

/** How far a figure stands from its place in the grid, in distances of neighbouring places. */
export interface Shift {
  readonly x: number;
  readonly y: number;
}

export interface Printed {
  /** In reading order. */
  readonly figures: readonly Figure[];
  /** How many stand side by side; absent: all of them in one row. A last row that is not full stands in the middle. */
  readonly columns?: number | undefined;
  /** Where figures stand loosely, one for each; absent: in their places. */
  readonly shifts?: readonly Shift[] | undefined;
  /** What the child does; absent: points. */
  readonly response?: Response | undefined;
  /** Of the sticker to be placed; absent: the first colour that no figure has. */
  readonly stickerColour?: ColourName | undefined;
}

/** The place of the odd one among the figures, from 0. */
export interface Answer {
  readonly odd: number;
}

/** More than any sheet holds; a limit against hostile files. */
const MOST_FIGURES = 16;
/** Half a place: farther, a figure would stand in the place of another. */
const MOST_SHIFT = 0.5;

const shiftSchema = z.strictObject({
  x: z.number().min(-MOST_SHIFT).max(MOST_SHIFT),
  y: z.number().min(-MOST_SHIFT).max(MOST_SHIFT),
});

export const printedSchema: z.ZodType<Printed> = z.strictObject({
  figures: z.array(figureSchema).min(1).max(MOST_FIGURES),
  columns: z.int().min(1).max(MOST_FIGURES).optional(),
  shifts: z.array(shiftSchema).max(MOST_FIGURES).optional(),
  response: z.enum(PARAMETERS.response.values).optional(),
  stickerColour: z.enum(COLOUR_NAMES).optional(),
});

export const answerSchema: z.ZodType<Answer> = z.strictObject({
  odd: z
    .int()
    .min(0)
    .max(MOST_FIGURES - 1),
});
