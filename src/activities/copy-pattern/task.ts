// The printed facts of a copying task and its answer: a model, the boxes, the finished boxes.
import { z } from 'zod';
import {
  type ContentId,
  type Figure,
  figureSchema,
  SCRIPT_CONTENT_IDS,
} from '../../figures/index.ts';

/** What only a pattern has: dots of ink, cells filled to their edge, lines from point to point. */
export const OWN_CONTENTS = ['dots', 'filled-cells', 'lines'] as const;

/**
 * What stands in the cells of a model: contents of which a child can put down the figures. Left out are those
 * that no young hand draws (pictures, textures) or draws the same twice (sizes, numbers of dots).
 */
export const CONTENTS = [
  ...OWN_CONTENTS,
  'colours',
  'shapes',
  'directions',
  'capitals',
  'small-letters',
  'numerals',
  'signs',
  'shapes-and-colours',
  'directions-and-colours',
  ...SCRIPT_CONTENT_IDS,
] as const satisfies readonly ((typeof OWN_CONTENTS)[number] | ContentId)[];
export type Content = (typeof CONTENTS)[number];

export const RESPONSES = ['draw', 'sticker', 'colour-in', 'draw-line'] as const;
export type CopyResponse = (typeof RESPONSES)[number];

/** Diameters of dot stickers in mm that a printed task may ask for (common practice, no source). */
export const STICKER_RANGE_MM = { least: 8, most: 25 } as const;

/** What stands in each place, in the order that `CELLS_ORDER` tells; null: nothing stands there. */
export type Cells = readonly (Figure | null)[];

export interface Model {
  /** Rows of cells, or of lattice points: 2 to 5. */
  readonly rows: number;
  /** Columns of cells, or of lattice points: 2 to 5. */
  readonly columns: number;
  readonly cells: Cells;
}

export interface Box {
  readonly cells: Cells;
}

/** Everything that the page shows. */
export interface Printed {
  readonly model: Model;
  readonly boxes: readonly Box[];
  /** Absent: told from the figures of the model. */
  readonly content?: Content | undefined;
  /** Absent: the usual response to the content. */
  readonly response?: CopyResponse | undefined;
  /** Diameter of the stickers in mm, where the response is a sticker; absent: 16. */
  readonly stickerMm?: number | undefined;
}

/** Every box as it looks when it is finished: givens and added elements together, box by box. */
export type Answer = readonly Box[];

/** The most places there can be: 5 × 5 lattice points have 20 + 20 + 16 + 16 lines. */
const MOST_PLACES = 72;

const CELLS_ORDER =
  'Grid: rows × columns cells, row by row from the top left. ' +
  'Lattice (rows and columns count its points): first the level lines row by row, columns − 1 in each of the rows; ' +
  'then the upright lines, columns in each of the rows − 1; ' +
  'then the rising slants and then the falling slants, columns − 1 in each of the rows − 1. ' +
  'A level line is {form: "sign-level-line"}, an upright line {form: "sign-upright-line"}, ' +
  'a rising slant {form: "sign-upright-line", turn: 45}, a falling slant {form: "sign-upright-line", turn: 135}. ' +
  'null: nothing stands there.';

const cells = z.array(figureSchema.nullable()).max(MOST_PLACES).describe(CELLS_ORDER);
const boxes = z.array(z.strictObject({ cells })).min(1).max(6);
const side = z.number().int().min(2).max(5);

export const printedSchema: z.ZodType<Printed> = z.strictObject({
  model: z
    .strictObject({
      rows: side.describe('Rows of cells, or of lattice points.'),
      columns: side.describe('Columns of cells, or of lattice points.'),
      cells,
    })
    .describe('The pattern to copy.'),
  boxes: boxes.describe('The boxes as printed: what is there already, null where nothing is.'),
  content: z
    .enum(CONTENTS)
    .optional()
    .describe('What the model is made of; absent: told from its figures.'),
  response: z
    .enum(RESPONSES)
    .optional()
    .describe('What the child does; absent: the usual response to the content.'),
  stickerMm: z
    .number()
    .min(STICKER_RANGE_MM.least)
    .max(STICKER_RANGE_MM.most)
    .optional()
    .describe('Diameter of the stickers in mm; absent: 16.'),
});

export const answerSchema: z.ZodType<Answer> = boxes.describe(
  'The whole of each finished box, givens included: equal to the model.',
);
