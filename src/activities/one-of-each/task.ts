// What a one-of-each task is: its parameters, what stands on paper, and the answer.
import { z } from 'zod';
import { CONTENT_IDS, type Figure, figureSchema } from '../../figures/index.ts';
import { choice, type ValuesOf, whole, yesNo } from '../parameters.ts';
import type { StickerSoldMm } from '../sticker-sizes.ts';

export const ID = 'one-of-each';

/** Diameters in mm of those that are not too small for a cell, nor too large for five of them in a row; by eye. */
const STICKER_SIZES = ['13', '16', '19'] as const satisfies readonly StickerSoldMm[];
export const FEWEST = 2;
export const MOST = 5;

export const PARAMETERS = {
  content: choice(...CONTENT_IDS),
  response: choice('point', 'sticker', 'counters', 'colour-in', 'draw', 'cut'),
  /** How many rows, columns and different figures. */
  order: whole(FEWEST, MOST),
  /** How many cells are to be filled. */
  empty: whole(1, 17),
  /** The hardest thought that is needed: see `grading.ts`. */
  logic: choice('one-gap', 'row-and-column', 'elsewhere'),
  /** Whether some cell can be told only once another has been filled. */
  chain: yesNo(),
  /** Whether each of the four blocks of two by two holds one of each, too. */
  boxes: yesNo(),
  stickerMm: choice(...STICKER_SIZES),
};

export type SquareValues = ValuesOf<typeof PARAMETERS>;
export type Response = SquareValues['response'];
export type Logic = SquareValues['logic'];

export interface Printed {
  /** The rows of the grid, from the top; `null` is an empty cell. */
  readonly rows: readonly (readonly (Figure | null)[])[];
  /** The figures to use, shown above the grid. */
  readonly figures: readonly Figure[];
  /** Whether the thick lines make blocks of two by two in which there is one of each, too; absent: no. */
  readonly boxes?: boolean | undefined;
  /** What the child does; absent: points and tells. */
  readonly response?: Response | undefined;
  /** Figures to cut out, one for each empty cell, in any order; absent: none. */
  readonly pieces?: readonly Figure[] | undefined;
  /** Diameter in mm at which dots are printed, exactly; absent: figures are as large as fits. */
  readonly stickerMm?: number | undefined;
}

/** What belongs into the empty cells, in reading order. */
export interface Answer {
  readonly figures: readonly Figure[];
}

/** More than any sheet holds; limits against hostile files. */
const MOST_ROWS = 6;
const MOST_CELLS = MOST_ROWS ** 2;

export const printedSchema: z.ZodType<Printed> = z.strictObject({
  rows: z.array(z.array(figureSchema.nullable()).min(1).max(MOST_ROWS)).min(1).max(MOST_ROWS),
  figures: z.array(figureSchema).min(1).max(MOST_ROWS),
  boxes: z.boolean().optional(),
  response: z.enum(PARAMETERS.response.values).optional(),
  pieces: z.array(figureSchema).max(MOST_CELLS).optional(),
  stickerMm: z.number().min(6).max(40).optional(),
});

export const answerSchema: z.ZodType<Answer> = z.strictObject({
  figures: z.array(figureSchema).max(MOST_CELLS),
});
