// The form of a recipe as a person writes it down.
import { z } from 'zod';
import {
  ACTIVITY_IDS,
  type ActivityId,
  activityOf,
  type Parameter,
  type Value,
} from '../activities/index.ts';
import { MAX_SEED } from '../base/index.ts';
import { MOST_OWN_ON_SHEET } from '../figures/index.ts';
import { HANDS, INKS, MARGINS, ORIENTATIONS, PAPER_NAMES, PRINT_CHOICES } from '../page/index.ts';
import { COLOUR_NAMES } from '../palette/index.ts';
import { FRAMEWORKS } from './goals.ts';
import { MADE } from './made.ts';
import { ownPicturesSchema } from './own-pictures.ts';
import { LONGEST_NAME, MOST_CHILDREN, MOST_SHIFT, SORTINGS } from './recipe.ts';
import { closedObject, wholeNumber } from './schema-parts.ts';
import { MOST_PARTS, MOST_SHEETS, MOST_TASKS, SIZES } from './sheet-spec.ts';
import { stockSchema } from './stock-facts.ts';
import { TO_CUT } from './to-cut.ts';

function valueSchema(parameter: Parameter): z.ZodType<Value> {
  switch (parameter.kind) {
    case 'whole':
      return wholeNumber(parameter.min, parameter.max);
    case 'choice':
      return z.enum(parameter.values);
    case 'yes-no':
      return z.boolean();
  }
}

function partSchema(id: ActivityId) {
  const { ladder, parameters } = activityOf(id);
  const values = Object.entries(parameters).map(
    ([name, parameter]) => [name, valueSchema(parameter).optional()] as const,
  );
  return closedObject({
    activity: z.literal(id),
    step: wholeNumber(1, ladder.length).optional(),
    difficulty: z.number().optional(),
    values: closedObject(Object.fromEntries(values)).optional(),
    tasks: wholeNumber(1, MOST_TASKS).optional(),
    sheets: wholeNumber(1, MOST_SHEETS),
  });
}

const PART_SCHEMAS = ACTIVITY_IDS.map(partSchema) as unknown as readonly [
  ReturnType<typeof partSchema>,
  ...ReturnType<typeof partSchema>[],
];

const childSchema = closedObject({
  name: z.string().min(1).max(LONGEST_NAME),
  shift: wholeNumber(-MOST_SHIFT, MOST_SHIFT).optional(),
});

export const pageSchema = closedObject({
  paper: z.enum(PAPER_NAMES),
  orientation: z.enum(ORIENTATIONS),
  margin: z.enum(MARGINS).optional(),
});

export const RECIPE_FORMAT = 'samewise.recipe';

export const recipeSchema = closedObject({
  format: z.literal(RECIPE_FORMAT),
  version: z.literal(1),
  seed: wholeNumber(0, MAX_SEED).optional(),
  page: pageSchema.optional(),
  print: z.enum(PRINT_CHOICES).optional(),
  colours: z.array(z.enum(COLOUR_NAMES)).min(1).max(COLOUR_NAMES.length).optional(),
  pictures: ownPicturesSchema
    .min(1)
    .max(MOST_OWN_ON_SHEET)
    .optional()
    .describe('Own pictures, beside those that are always there.'),
  onlyOwnPictures: z.boolean().optional(),
  hand: z.enum(HANDS).optional(),
  size: z.enum(SIZES).optional(),
  ink: z.enum(INKS).optional(),
  parts: z.array(z.discriminatedUnion('activity', PART_SCHEMAS)).min(1).max(MOST_PARTS),
  letters: z
    .string()
    .min(1)
    .max(LONGEST_NAME)
    .optional()
    .describe('A name, or some letters: contents of letters are about these.'),
  ownLetters: z
    .boolean()
    .optional()
    .describe('Whether each child of a group gets the letters of its own name.'),
  goals: z.array(z.enum(FRAMEWORKS)).max(FRAMEWORKS.length).optional(),
  toCut: z.array(z.enum(TO_CUT)).max(TO_CUT.length).optional(),
  children: z.array(childSchema).min(1).max(MOST_CHILDREN).optional(),
  sortedBy: z.enum(SORTINGS).optional(),
  onlyWith: stockSchema.optional(),
  made: z.enum(MADE).optional(),
  quick: z.boolean().optional(),
});

export type WrittenRecipe = z.infer<typeof recipeSchema>;
export type WrittenPart = z.infer<ReturnType<typeof partSchema>>;
