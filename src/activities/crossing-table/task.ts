// What a crossing-table task is: its parameters, what stands on paper, and the answer.
import { z } from 'zod';
import { type Figure, figureSchema, SCRIPT_CONTENT_IDS } from '../../figures/index.ts';
import { choice, type ValuesOf, whole } from '../parameters.ts';

export const ID = 'crossing-table';

/** Those that look at two or three things, then those of one thing that are crossed with colours here. */
export const CONTENTS = [
  'shapes-and-colours',
  'shapes-and-sizes',
  'colours-and-sizes',
  'directions-and-colours',
  'shapes-colours-and-sizes',
  'capitals',
  'small-letters',
  'numerals',
  'signs',
  'dot-quantities',
  'textures',
  ...SCRIPT_CONTENT_IDS,
] as const;

export const FEWEST_LINES = 2;
export const MOST_LINES = 4;

export const PARAMETERS = {
  content: choice(...CONTENTS),
  response: choice('point', 'join', 'cut', 'draw'),
  rows: whole(FEWEST_LINES, MOST_LINES),
  columns: whole(FEWEST_LINES, MOST_LINES),
  /** How many cells are empty, each with one figure that belongs into it. */
  empty: whole(1, 16),
  /** Which heads are printed: of rows and columns, of either, or none, so that they must be found. */
  heads: choice('both', 'one', 'none'),
  /** How many figures are offered that belong nowhere. */
  extra: whole(0, 2),
};

export type TableValues = ValuesOf<typeof PARAMETERS>;
export type Content = TableValues['content'];
export type Response = TableValues['response'];

/** What a whole row or column is about: the fields that all its figures share, and no others. */
export type Head = Figure;

export interface Printed {
  /** The rows of the table, from the top; `null` is an empty cell. */
  readonly rows: readonly (readonly (Figure | null)[])[];
  /** Beside the rows; absent: what a row is about is to be found from its figures. */
  readonly rowHeads?: readonly Head[] | undefined;
  /** Above the columns; absent: likewise. */
  readonly columnHeads?: readonly Head[] | undefined;
  /** Figures below the table, each of which belongs into one empty cell or nowhere; absent: the child draws. */
  readonly loose?: readonly Figure[] | undefined;
  /** What the child does; absent: points where there are loose figures, else draws. */
  readonly response?: Response | undefined;
}

/** What belongs into the empty cells, in reading order. */
export interface Answer {
  readonly figures: readonly Figure[];
}

/** More than any sheet holds; limits against hostile files. */
const MOST_ROWS = 6;
const MOST_CELLS = MOST_ROWS ** 2;

const lineSchema = z.array(figureSchema).min(1).max(MOST_ROWS);

export const printedSchema: z.ZodType<Printed> = z.strictObject({
  rows: z.array(z.array(figureSchema.nullable()).min(1).max(MOST_ROWS)).min(1).max(MOST_ROWS),
  rowHeads: lineSchema.optional(),
  columnHeads: lineSchema.optional(),
  loose: z.array(figureSchema).min(1).max(MOST_CELLS).optional(),
  response: z.enum(PARAMETERS.response.values).optional(),
});

export const answerSchema: z.ZodType<Answer> = z.strictObject({
  figures: z.array(figureSchema).max(MOST_CELLS),
});

/** What the child does with a task. */
export function responseTo({ response, loose }: Printed): Response {
  return response ?? (loose ? 'point' : 'draw');
}
