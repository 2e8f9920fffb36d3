// What a missing-part task is: its parameters, what stands on paper, and the answer.
import { z } from 'zod';
import { CONTENT_IDS, type Figure, figureSchema } from '../../figures/index.ts';
import { choice, type ValuesOf, whole } from '../parameters.ts';

export const ID = 'missing-part';

export const PARAMETERS = {
  content: choice(...CONTENT_IDS),
  response: choice('point', 'ring', 'join', 'draw'),
  /** How the figures of the field follow each other. */
  rule: choice('rows', 'columns', 'checker', 'diagonal', 'tiles'),
  /** How the second attribute does; `same`: as the first. */
  second: choice('same', 'rows', 'columns', 'checker', 'diagonal'),
  /** Rows of the field, and columns. */
  field: whole(3, 5),
  /** How many figures are missing, side by side or in a square. */
  hole: choice('one', 'two', 'four'),
  /** How many pieces are offered; where the child draws, none. */
  choices: whole(2, 4),
  /** How like the right piece the wrong ones are. */
  likeness: choice('far', 'near'),
};

export type PartValues = ValuesOf<typeof PARAMETERS>;
export type Response = PartValues['response'];

/** Figures of a piece, row by row. */
export type Piece = readonly Figure[];

export interface Printed {
  /** Row by row; `null` is where the hole is. */
  readonly field: readonly (Figure | null)[];
  readonly columns: number;
  /** Pieces to choose from, each as large as the hole; absent: the child draws. */
  readonly offered?: readonly Piece[] | undefined;
  /** What the child does; absent: points where pieces are offered, else draws. */
  readonly response?: Response | undefined;
}

/** What belongs into the hole, row by row. */
export interface Answer {
  readonly figures: Piece;
}

/** More than any sheet holds; limits against hostile files. */
const MOST_CELLS = 64;
const MOST_SIDE = 8;
const MOST_PIECES = 8;

const pieceSchema = z.array(figureSchema).min(1).max(MOST_CELLS);

export const printedSchema: z.ZodType<Printed> = z.strictObject({
  field: z.array(figureSchema.nullable()).min(4).max(MOST_CELLS),
  columns: z.int().min(2).max(MOST_SIDE),
  offered: z.array(pieceSchema).min(1).max(MOST_PIECES).optional(),
  response: z.enum(PARAMETERS.response.values).optional(),
});

export const answerSchema: z.ZodType<Answer> = z.strictObject({ figures: pieceSchema });

/** What the child does with a task. */
export function responseTo({ response, offered }: Printed): Response {
  return response ?? (offered ? 'point' : 'draw');
}
