// What a by-key task prints, as types and as the schema that reads it back; nothing else is known to the solver.
import { z } from 'zod';
import {
  type Figure,
  figureSchema,
  SIGNS,
  type Sign,
  TEXTURES,
  type Texture,
} from '../../figures/index.ts';
import { COLOUR_NAMES, type ColourName } from '../../palette/index.ts';

/** What the child does to a figure. */
export type Response =
  | { readonly kind: 'colour-in'; readonly colour: ColourName }
  | { readonly kind: 'ring'; readonly colour: ColourName }
  | { readonly kind: 'sign'; readonly sign: Sign }
  | { readonly kind: 'fill'; readonly texture: Texture }
  | { readonly kind: 'sticker'; readonly colour: ColourName };

/** One place of the key: this figure gets this response. */
export interface Entry {
  readonly figure: Figure;
  readonly response: Response;
}

export interface Printed {
  readonly key: readonly Entry[];
  /** In reading order. */
  readonly items: readonly Figure[];
  /** How many items stand in a row; absent: as the page likes. */
  readonly columns?: number | undefined;
  /** Diameter in mm of the stickers to be placed; absent: `STICKER_MM`. */
  readonly stickerMm?: number | undefined;
}

/** For each item, in reading order, the place in the key (0 upward) that it is treated by. */
export type Answer = readonly number[];

export const MOST_ENTRIES = 6;
export const MOST_ITEMS = 24;

/** Diameters of dot stickers that a three-year-old can place, in mm; 13 is a common size. Common practice, no source. */
export const LEAST_STICKER_MM = 12;
export const MOST_STICKER_MM = 20;
export const STICKER_MM = 13;

const colour = z.enum(COLOUR_NAMES);

const response = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('colour-in'), colour }),
  z.strictObject({ kind: z.literal('ring'), colour }),
  z.strictObject({ kind: z.literal('sign'), sign: z.enum(SIGNS) }),
  z.strictObject({ kind: z.literal('fill'), texture: z.enum(TEXTURES) }),
  z.strictObject({ kind: z.literal('sticker'), colour }),
]);

export const printedSchema: z.ZodType<Printed> = z.strictObject({
  key: z
    .array(z.strictObject({ figure: figureSchema, response }))
    .min(1)
    .max(MOST_ENTRIES),
  items: z.array(figureSchema).min(1).max(MOST_ITEMS),
  columns: z.int().min(1).max(MOST_ITEMS).optional(),
  stickerMm: z.int().min(LEAST_STICKER_MM).max(MOST_STICKER_MM).optional(),
});

export const answerSchema: z.ZodType<Answer> = z
  .array(
    z
      .int()
      .min(0)
      .max(MOST_ENTRIES - 1),
  )
  .min(1)
  .max(MOST_ITEMS);

export function sameAnswer(one: Answer, other: Answer): boolean {
  return one.length === other.length && one.every((entry, index) => entry === other[index]);
}
