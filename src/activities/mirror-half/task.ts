// What a mirror-half task is: its parameters, what stands on paper, and the answer.
import { z } from 'zod';
import { CONTENT_IDS, type ContentId, type Figure, figureSchema } from '../../figures/index.ts';
import { choice, type ValuesOf, whole } from '../parameters.ts';
import { STICKERS_SOLD_MM } from '../sticker-sizes.ts';

export const ID = 'mirror-half';

/** Left out: scripts in which fewer than three letters look the same in both mirrors. */
const LEFT_OUT = [
  'devanagari-letters',
  'arabic-letters',
  'devanagari-varnamala',
  'devanagari-numerals',
  'arabic-letters-with-hamza',
  'arabic-indic-numerals',
] as const satisfies readonly ContentId[];
export type MirrorContent = Exclude<ContentId, (typeof LEFT_OUT)[number]>;
export const CONTENTS = CONTENT_IDS.filter(
  (content): content is MirrorContent => !LEFT_OUT.some((out) => out === content),
);

export const PARAMETERS = {
  content: choice(...CONTENTS),
  response: choice('sticker', 'colour-in', 'draw', 'point', 'ring'),
  /** How the mirror line lies; both: a quarter is given, and three are missing. */
  axis: choice('upright', 'level', 'both'),
  /** How many places the given part reaches away from the line. */
  deep: whole(2, 4),
  /** How many places lie along the line. */
  along: whole(2, 5),
  /** How many places of the given part hold something. */
  elements: whole(2, 12),
  /** How many different figures there are. */
  kinds: whole(1, 4),
  /** Which part is printed: left or upper, or right or lower. */
  given: choice('first', 'second'),
  /** How many halves there are to choose from; speaks only where one is chosen. */
  choices: whole(2, 4),
  /** What is wrong with the others; speaks only where one is chosen. */
  wrong: choice('far', 'near', 'turned', 'copied'),
  /** Diameter of the stickers in mm; speaks only where the response is a sticker. */
  stickerMm: choice(...STICKERS_SOLD_MM),
};

export type MirrorValues = ValuesOf<typeof PARAMETERS>;
export type Axis = MirrorValues['axis'];
export type Response = MirrorValues['response'];

/** Which part is printed; the upper right one of quarters is for the left hand. */
const GIVEN = [...PARAMETERS.given.values, 'upper-right'] as const;
export type Given = (typeof GIVEN)[number];

/** What stands in each place, row by row from the top left; null: nothing. */
export type Cells = readonly (Figure | null)[];

export interface Part {
  readonly rows: number;
  readonly columns: number;
  readonly cells: Cells;
}

export interface Printed {
  /** The half, or quarter, that is there. */
  readonly part: Part;
  readonly axis: Axis;
  /** Absent: first, the left or upper one; of quarters the one on the upper left. */
  readonly given?: Given | undefined;
  /** Halves to choose from, as large as the given one, in reading order; absent: the rest is made. */
  readonly offered?: readonly { readonly cells: Cells }[] | undefined;
  /** Absent: points where halves are offered, else draws. */
  readonly response?: Response | undefined;
  /** Diameter of the stickers in mm, where the response is a sticker; absent: 16. */
  readonly stickerMm?: number | undefined;
}

/** The whole finished picture row by row, or the place (0 upward) of the half that finishes it. */
export type Answer = { readonly cells: Cells } | { readonly choice: number };

/** More than any sheet holds: limits against hostile files. */
const MOST_SIDE = 6;
const MOST_OFFERED = 6;

const cells = z.array(figureSchema.nullable()).max(MOST_SIDE * MOST_SIDE);

export const printedSchema: z.ZodType<Printed> = z.strictObject({
  part: z
    .strictObject({
      rows: z.int().min(1).max(MOST_SIDE),
      columns: z.int().min(1).max(MOST_SIDE),
      cells: cells.describe('Row by row from the top left; null: nothing stands there.'),
    })
    .describe('The half that is there, or with both lines the quarter.'),
  axis: z.enum(PARAMETERS.axis.values),
  given: z.enum(GIVEN).optional(),
  offered: z.array(z.strictObject({ cells })).min(1).max(MOST_OFFERED).optional(),
  response: z.enum(PARAMETERS.response.values).optional(),
  stickerMm: z.number().min(8).max(25).optional(),
});

export const answerSchema: z.ZodType<Answer> = z.union([
  z.strictObject({ cells: z.array(figureSchema.nullable()).max(4 * MOST_SIDE * MOST_SIDE) }),
  z.strictObject({
    choice: z
      .int()
      .min(0)
      .max(MOST_OFFERED - 1),
  }),
]);

/** What the child does. */
export function responseTo({ response, offered }: Printed): Response {
  return response ?? (offered ? 'point' : 'draw');
}

/** Whether the child chooses one of the offered halves. */
export function isChosen(response: Response): boolean {
  return response === 'point' || response === 'ring';
}
