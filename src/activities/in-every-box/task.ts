// What an in-every-box task is: its parameters, what stands on paper, and the answer.
import { z } from 'zod';
import { CONTENT_IDS, type Figure, figureSchema } from '../../figures/index.ts';
import { choice, type ValuesOf, whole } from '../parameters.ts';
import { STICKERS_SOLD_MM } from '../sticker-sizes.ts';

export const ID = 'in-every-box';

export const PARAMETERS = {
  content: choice(...CONTENT_IDS),
  response: choice('point', 'ring', 'sticker'),
  boxes: whole(2, 6),
  figures: whole(2, 8),
  shared: whole(1, 3),
  nearMisses: whole(0, 14),
  layout: choice('row', 'grid', 'loose'),
  stickerMm: choice(...STICKERS_SOLD_MM),
};

export type BoxValues = ValuesOf<typeof PARAMETERS>;
export type Content = BoxValues['content'];
export type Layout = BoxValues['layout'];
export type Response = BoxValues['response'];

/** A figure's middle, in mm from the top left corner of its box at the least size of the box. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

export interface Box {
  /** In reading order, but for `places`. */
  readonly figures: readonly Figure[];
  /** Where each figure stands; absent: as `layout` says. */
  readonly places?: readonly Place[] | undefined;
}

export interface Printed {
  readonly boxes: readonly Box[];
  /** How the figures of a box stand; absent: in a grid. */
  readonly layout?: Layout | undefined;
  /** What the child does; absent: points. */
  readonly response?: Response | undefined;
  /** Empty circles below the boxes, one for each sticker; absent: none. */
  readonly circles?: number | undefined;
  /** Diameter in mm at which dots and circles are printed, exactly; absent: figures are as large as fits. */
  readonly stickerMm?: number | undefined;
}

/** The figures that stand in every box, in no particular order. */
export interface Answer {
  readonly figures: readonly Figure[];
}

/** More than any sheet holds; a limit against hostile files. */
const MOST_BOXES = 12;
const MOST_FIGURES = 16;
const FARTHEST_MM = 300;

const placeSchema = z.strictObject({
  x: z.number().min(0).max(FARTHEST_MM),
  y: z.number().min(0).max(FARTHEST_MM),
});

const boxSchema = z.strictObject({
  figures: z.array(figureSchema).min(1).max(MOST_FIGURES),
  places: z.array(placeSchema).max(MOST_FIGURES).optional(),
});

export const printedSchema: z.ZodType<Printed> = z.strictObject({
  boxes: z.array(boxSchema).min(1).max(MOST_BOXES),
  layout: z.enum(PARAMETERS.layout.values).optional(),
  response: z.enum(PARAMETERS.response.values).optional(),
  circles: z.int().min(0).max(MOST_FIGURES).optional(),
  stickerMm: z.number().min(6).max(40).optional(),
});

export const answerSchema: z.ZodType<Answer> = z.strictObject({
  figures: z.array(figureSchema).max(MOST_FIGURES),
});
