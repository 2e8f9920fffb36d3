// What a continue-row task is: its parameters, what stands on paper, and the answer.
import { z } from 'zod';
import { CONTENT_IDS, type Figure, figureSchema } from '../../figures/index.ts';
import { choice, type ValuesOf, whole } from '../parameters.ts';
import { UNITS } from './units.ts';

export const ID = 'continue-row';

/** Diameters in mm of dot stickers that are sold and not too small for a row; common practice, no source. */
export const STICKER_SIZES = ['13', '16', '19'] as const;
export const FEWEST_SHOWN = 4;
export const MOST_SHOWN = 10;
export const MOST_MISSING = 3;

export const PARAMETERS = {
  content: choice(...CONTENT_IDS),
  response: choice('point', 'ring', 'sticker', 'colour-in', 'draw'),
  /** What repeats, each letter a different figure, or a different first attribute of one. */
  unit: choice(...UNITS),
  /** What repeats in the second attribute; `same`: it changes together with the first. */
  second: choice('same', 'AB', 'AAB', 'ABB', 'ABC'),
  shown: whole(FEWEST_SHOWN, MOST_SHOWN),
  missing: whole(1, MOST_MISSING),
  gap: choice('end', 'middle'),
  /** How many figures are offered to choose from; only where the child points or rings. */
  choices: whole(2, 4),
  stickerMm: choice(...STICKER_SIZES),
};

export type RowValues = ValuesOf<typeof PARAMETERS>;
export type Response = RowValues['response'];

export interface Printed {
  /** From left to right; `null` is an empty place. */
  readonly row: readonly (Figure | null)[];
  /** Figures below the row to choose from; absent: none. */
  readonly offered?: readonly Figure[] | undefined;
  /** What the child does; absent: points where figures are offered, else draws. */
  readonly response?: Response | undefined;
  /** Diameter in mm at which dots are printed, exactly; absent: figures are as large as fits. */
  readonly stickerMm?: number | undefined;
}

/** What belongs into the empty places, from left to right. */
export interface Answer {
  readonly figures: readonly Figure[];
}

/** More than a row across a sheet holds; a limit against hostile files. */
const MOST_PLACES = 24;
const MOST_OFFERED = 8;

export const printedSchema: z.ZodType<Printed> = z.strictObject({
  row: z.array(figureSchema.nullable()).min(2).max(MOST_PLACES),
  offered: z.array(figureSchema).min(1).max(MOST_OFFERED).optional(),
  response: z.enum(PARAMETERS.response.values).optional(),
  stickerMm: z.number().min(6).max(40).optional(),
});

export const answerSchema: z.ZodType<Answer> = z.strictObject({
  figures: z.array(figureSchema).max(MOST_PLACES),
});

/** What the child does with a task. */
export function responseTo({ response, offered }: Printed): Response {
  return response ?? (offered ? 'point' : 'draw');
}
