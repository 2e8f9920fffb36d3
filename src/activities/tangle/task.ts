// What a tangle task is: its parameters, what stands on paper, and the answer.
import { z } from 'zod';
import {
  type ContentId,
  type Figure,
  figureSchema,
  formOf,
  isLetter,
  isNumeral,
  isPicture,
  isShape,
} from '../../figures/index.ts';
import { choice, type ValuesOf, whole } from '../parameters.ts';

export const ID = 'tangle';

/**
 * Contents whose figures have an outline of their own and differ in more than what is inside it: not colours,
 * sizes, textures and dots alone, nor signs, which are lines already.
 */
export const CONTENTS = [
  'shapes',
  'shapes-and-colours',
  'directions',
  'pictures',
  'capitals',
  'small-letters',
  'numerals',
  'cyrillic-capitals',
  'cyrillic-small',
  'greek-capitals',
  'greek-small',
] as const satisfies readonly ContentId[];
export type TangleContent = (typeof CONTENTS)[number];

export const PARAMETERS = {
  content: choice(...CONTENTS),
  response: choice('point', 'ring', 'colour-in'),
  /** How many outlines lie over one another. */
  shown: whole(2, 6),
  /** How many of those to choose from are not among them. */
  absent: whole(1, 4),
  overlap: choice('little', 'half', 'much'),
};

export type TangleValues = ValuesOf<typeof PARAMETERS>;
export type Response = TangleValues['response'];

/** An outline of the tangle: its figure, and the middle of its cell in cell sides from the first corner. */
export interface Placed {
  readonly figure: Figure;
  readonly x: number;
  readonly y: number;
}

export interface Printed {
  /** Drawn as outlines, all in cells of one size. */
  readonly tangle: readonly Placed[];
  /** In reading order, as large as in the tangle and turned as there. */
  readonly candidates: readonly Figure[];
  /** What the child does; absent: points. */
  readonly response?: Response | undefined;
}

/** The places (0 upward, rising) of the candidates that are in the tangle. */
export type Answer = readonly number[];

/**
 * Lines no further apart than this, in cell sides, look like one: 1.1 mm at the least print, at which letters, which
 * are fine, have the larger cells.
 */
export function closeness({ form = 'circle' }: Figure): number {
  return isLetter(form) || isNumeral(form) ? 0.03 : 0.045;
}

/** More than any sheet holds; limits against hostile files. */
const MOST_SHOWN = 8;
const MOST_CANDIDATES = 12;
const MOST_CELLS = 8;

/** A figure whose line alone is printed, so that no fill and no size can tell it from another. */
const outlineSchema = figureSchema.refine((figure) => {
  const form = formOf(figure);
  const hasOutline = isShape(form) || isLetter(form) || isNumeral(form) || isPicture(form);
  return hasOutline && figure.fill === undefined && figure.size === undefined;
}, 'an outline is a shape, a letter, a numeral or a picture, without fill or size');

const sideSchema = z.number().min(-MOST_CELLS).max(MOST_CELLS);

export const printedSchema: z.ZodType<Printed> = z.strictObject({
  tangle: z
    .array(z.strictObject({ figure: outlineSchema, x: sideSchema, y: sideSchema }))
    .min(1)
    .max(MOST_SHOWN),
  candidates: z.array(outlineSchema).min(1).max(MOST_CANDIDATES),
  response: z.enum(PARAMETERS.response.values).optional(),
});

export const answerSchema: z.ZodType<Answer> = z
  .array(
    z
      .int()
      .min(0)
      .max(MOST_CANDIDATES - 1),
  )
  .max(MOST_CANDIDATES);
