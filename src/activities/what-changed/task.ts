// What a what-changed task is: its parameters, what stands on paper, and the answer.
import { z } from 'zod';
import { CONTENT_IDS, type Figure, figureSchema } from '../../figures/index.ts';
import { choice, type ValuesOf, whole } from '../parameters.ts';

export const ID = 'what-changed';

const FEWEST_FIGURES = 3;
export const MOST_FIGURES = 12;
export const MOST_CHANGES = 4;

export const PARAMETERS = {
  content: choice(...CONTENT_IDS),
  response: choice('point', 'ring', 'cross'),
  /**
   * What happens to a figure: it goes, it comes, it changes in the content's first attribute, in any one
   * attribute; all of these on one page; or two figures change places.
   */
  kind: choice('gone', 'added', 'first', 'any', 'mixed', 'swapped'),
  figures: whole(FEWEST_FIGURES, MOST_FIGURES),
  /** How many places differ. */
  changes: whole(1, MOST_CHANGES),
  /** How like what it was a changed figure is. */
  likeness: choice('far', 'near'),
  layout: choice('grid', 'loose'),
};

export type ChangeValues = ValuesOf<typeof PARAMETERS>;
export type Response = ChangeValues['response'];

/** How far a figure stands from the middle of its place, in cells; the same in both pictures. */
export interface Nudge {
  readonly across: number;
  readonly down: number;
}

/** A picture: its places in reading order; `null` is an empty place. */
export type Scene = readonly (Figure | null)[];

export interface Printed {
  readonly first: Scene;
  readonly second: Scene;
  /** How many places the child is told to find. */
  readonly asked: number;
  /** What the child is told: that places differ, or that figures have changed places; absent: that they differ. */
  readonly told?: 'differences' | 'swaps' | undefined;
  /** One for each place; absent: figures stand in the middle of their places. */
  readonly nudges?: readonly Nudge[] | undefined;
  /** What the child does; absent: points. */
  readonly response?: Response | undefined;
}

/** The places (0 upward, in reading order) that differ. */
export type Answer = readonly number[];

/** Between two cells, in cells. */
export const GAP_SHARE = 0.4;
/** Figures stand off the middle of their places by at most this, in cells. */
export const MOST_NUDGE = 0.15;

/** More than any sheet holds; a limit against hostile files. */
const MOST_PLACES = 24;

/** How many places stand side by side, by how many there are: up to three in one row, more in rows of two and more. */
const COLUMNS: readonly number[] = [1, 1, 2, 3, 2, 3, 3, 4, 4, 3, 5, 6, 6];

export function columnsFor(places: number): number {
  return COLUMNS[places] ?? 6;
}

const sceneSchema = z.array(figureSchema.nullable()).min(1).max(MOST_PLACES);
const nudgeSchema = z.number().min(-0.5).max(0.5);

export const printedSchema: z.ZodType<Printed> = z.strictObject({
  first: sceneSchema,
  second: sceneSchema,
  asked: z.int().min(1).max(MOST_PLACES),
  told: z.enum(['differences', 'swaps']).optional(),
  nudges: z
    .array(z.strictObject({ across: nudgeSchema, down: nudgeSchema }))
    .max(MOST_PLACES)
    .optional(),
  response: z.enum(PARAMETERS.response.values).optional(),
});

export const answerSchema: z.ZodType<Answer> = z
  .array(
    z
      .int()
      .min(0)
      .max(MOST_PLACES - 1),
  )
  .max(MOST_PLACES);
