// What a follow-the-line task is: its parameters, what stands on paper, and the answer.
import { z } from 'zod';
import { type Path, type PathStep, saying, told } from '../../base/index.ts';
import { CONTENT_IDS, type Figure, figureSchema } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { COLOUR_NAMES, type ColourName } from '../../palette/index.ts';
import { choice, type ValuesOf, whole } from '../parameters.ts';
import type { StickerSoldMm } from '../sticker-sizes.ts';

export const ID = 'follow-the-line';

/** Diameters in mm of those that fit between lines that wind side by side; by eye. */
const STICKER_SIZES = ['10', '13', '16', '19'] as const satisfies readonly StickerSoldMm[];

export const PARAMETERS = {
  content: choice(...CONTENT_IDS),
  response: choice('point', 'trace', 'sticker', 'colour-in'),
  lines: whole(2, 7),
  /** How often two lines cross, all crossings counted. */
  crossings: whole(0, 15),
  /** Each line in a colour of its own, or all in ink. */
  lineColours: choice('own', 'ink'),
  direction: choice('across', 'down'),
  stickerMm: choice(...STICKER_SIZES),
};

export type LineValues = ValuesOf<typeof PARAMETERS>;
export type Response = LineValues['response'];
export type Direction = LineValues['direction'];

/** A point of the field in mm: how far along from the starts, and how far across from the first. */
export type FieldPoint = readonly [along: number, across: number];

/** A chain of cubic curves: the first point, then two control points and an end for each curve. */
export type Curve = readonly FieldPoint[];

/** The chain as a path, along for x and across for y; in mm. */
export function pathOf([first, ...rest]: Curve): Path {
  if (!first) return [];
  const curves = Array.from({ length: Math.floor(rest.length / 3) }, (_, index): PathStep => {
    const [one = first, two = first, end = first] = rest.slice(3 * index, 3 * index + 3);
    return ['C', ...one, ...two, ...end];
  });
  return [['M', ...first], ...curves];
}

/**
 * The values that a task is made with: for the left hand, which would lie on the starts while it fills in an end to
 * their right, lines to empty circles run down.
 */
export function valuesFor(values: LineValues, { hand }: PrintStyle): LineValues {
  const { response } = values;
  const isFilledIn = response === 'sticker' || response === 'colour-in';
  return hand === 'left' && isFilledIn ? { ...values, direction: 'down' } : values;
}

export interface Printed {
  /** From top to bottom, or from left to right where lines run down. */
  readonly starts: readonly Figure[];
  /** In the same order; absent: empty circles. */
  readonly ends?: readonly Figure[] | undefined;
  /** From one start to the next, in mm: start and end number k lie at (k + ½) × `laneMm` across. */
  readonly laneMm: number;
  /** From the starts, at 0 along, to the ends, in mm. */
  readonly lengthMm: number;
  readonly lines: readonly Curve[];
  /** The colour of each line; absent: ink. */
  readonly colours?: readonly ColourName[] | undefined;
  /** Absent: across. */
  readonly direction?: Direction | undefined;
  /** What the child does; absent: points. */
  readonly response?: Response | undefined;
  readonly stickerMm?: number | undefined;
}

/** For each start, in order, the number of the end (0 upward) that its line leads to. */
export type Answer = readonly number[];

/** More than any sheet holds; limits against hostile files. */
const MOST_LINES = 10;
const MOST_POINTS = 61;
const MOST_MM = 400;

const pointSchema = z.tuple([
  z.number().min(-MOST_MM).max(MOST_MM),
  z.number().min(-MOST_MM).max(MOST_MM),
]);
const curveSchema = z
  .array(pointSchema)
  .min(4)
  .max(MOST_POINTS)
  .refine((points) => points.length % 3 === 1, saying(told('reasons', 'expected.curve')));
const figuresSchema = z.array(figureSchema).min(1).max(MOST_LINES);

export const printedSchema: z.ZodType<Printed> = z.strictObject({
  starts: figuresSchema,
  ends: figuresSchema.optional(),
  laneMm: z.number().min(12).max(60),
  lengthMm: z.number().min(30).max(MOST_MM),
  lines: z.array(curveSchema).min(1).max(MOST_LINES),
  colours: z.array(z.enum(COLOUR_NAMES)).min(1).max(MOST_LINES).optional(),
  direction: z.enum(PARAMETERS.direction.values).optional(),
  response: z.enum(PARAMETERS.response.values).optional(),
  stickerMm: z.number().min(6).max(40).optional(),
});

export const answerSchema: z.ZodType<Answer> = z
  .array(
    z
      .int()
      .min(0)
      .max(MOST_LINES - 1),
  )
  .min(1)
  .max(MOST_LINES);

/**
 * Whether lines run from left to right on a mirrored page, too: such as lead to empty circles, which are only made for
 * the right hand and would have their starts under it.
 */
export function keepsDirection({ ends, direction }: Printed): boolean {
  return ends === undefined && direction !== 'down';
}
