// A recipe: what a pack is made of, as a person writes it down.
import { z } from 'zod';
import {
  ACTIVITY_IDS,
  type ActivityId,
  activityOf,
  type Parameter,
  type Value,
  withNearestContent,
} from '../activities/index.ts';
import { accept, MAX_SEED, type Refusal, type Result, refuse, told } from '../base/index.ts';
import { MOST_OWN_ON_SHEET, ownPictureId } from '../figures/index.ts';
import { aimAt } from '../learner/index.ts';
import {
  HANDS,
  INKS,
  MARGINS,
  ORIENTATIONS,
  PAPER_NAMES,
  PRINT_CHOICES,
  type PrintStyle,
} from '../page/index.ts';
import { COLOUR_NAMES } from '../palette/index.ts';
import { FRAMEWORKS, type Framework } from './goals.ts';
import { readJson } from './json-text.ts';
import { MADE, type Made } from './made.ts';
import { knowPictures, ownPicturesSchema } from './own-pictures.ts';
import { pathText } from './path-text.ts';
import { closedObject, wholeNumber } from './schema-parts.ts';
import { refusalsOf } from './schema-refusals.ts';
import {
  coloursField,
  DEFAULT_PAGE,
  DEFAULT_PRINT,
  MOST_PARTS,
  MOST_SHEETS,
  MOST_TASKS,
  type PrintChoices,
  printChoicesOf,
  SIZES,
  styleOf,
} from './sheet-spec.ts';
import { changesOf, valuesOf } from './sheet-values.ts';
import { type Stock, stockSchema } from './stock-facts.ts';
import { TO_CUT, type ToCut, toCutField } from './to-cut.ts';
import { versionRefusal } from './version-refusal.ts';

/** Some sheets of one activity at one step. */
export interface RecipePart {
  readonly activity: ActivityId;
  readonly step: number;
  /** Parameters that differ from the step's. */
  readonly values: Readonly<Record<string, Value>>;
  /** Tasks a sheet; absent: the step's own number, or as many of them as fit the page. */
  readonly tasks?: number;
  readonly sheets: number;
}

/** A child of a group. */
export interface GroupChild {
  readonly name: string;
  /** How many steps above (or, negative, below) the recipe's its sheets are; absent: none. */
  readonly shift?: number;
}

export const SORTINGS = ['child', 'activity'] as const;
export type Sorting = (typeof SORTINGS)[number];

export interface Recipe extends PrintChoices {
  /** Absent: whoever makes the pack chooses one. */
  readonly seed?: number;
  readonly parts: readonly RecipePart[];
  /** Whether the letters that each child's sheets are about are those of its own name; absent: not. */
  readonly ownLetters?: boolean;
  /** Curricula whose goals the adult's page names; absent: none. */
  readonly goals?: readonly Framework[];
  /** What is printed after each sheet to be cut out; absent: nothing. */
  readonly toCut?: readonly ToCut[];
  /** Each child gets all parts, on sheets of its own; absent: the pack is for nobody in particular. */
  readonly children?: readonly GroupChild[];
  /** How the sheets of a group lie; absent: by child. */
  readonly sortedBy?: Sorting;
  /** The house whose things alone the pack is made with; absent: any. */
  readonly onlyWith?: Stock;
  /** How the sheets come about; absent: printed. */
  readonly made?: Made;
  /** By hand, in the layout that is quickest by hand: one task on a page. */
  readonly quick?: boolean;
}

/** A school has more; make a pack for each room. */
export const MOST_CHILDREN = 500;
/** Longer than any name; a limit against slips. */
export const LONGEST_NAME = 200;
/** No ladder is longer. */
const MOST_SHIFT = 31;

/** A recipe is written by hand or by a form; more than this is none (about 1 MB). */
export const RECIPE_CHARACTERS = 1_000_000;

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

export const recipeSchema = closedObject({
  format: z.literal('samewise.recipe'),
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

/** Reads a recipe from the text of a file; refuses too much of it before parsing. */
export function readRecipeText(text: string): Result<Recipe> {
  const json = readJson(text, 'recipe', { characters: RECIPE_CHARACTERS });
  return json.ok ? readRecipe(json.value) : json;
}

/** Reads a recipe; refuses unknown fields and values that no sheet can be made from, with their paths. */
export function readRecipe(given: unknown): Result<Recipe> {
  const version = versionRefusal(given, 'recipe');
  if (version) return refuse(version);
  const read = recipeSchema.safeParse(given);
  if (!read.success) {
    return refuse(...refusalsOf(read.error, given, 'recipe').map(withNearestContent));
  }
  const { seed, goals, ownLetters, children, sortedBy, onlyWith, made, quick } = read.data;
  const unknown = knowPictures(read.data.pictures, 'recipe');
  if (unknown.length > 0) return refuse(...unknown);
  const choices = writtenChoices(read.data);
  const style = styleOf(choices);
  const aimed = read.data.parts.map((part, index) => aimedPart(part, index, style));
  const notAimed = aimed.flatMap((part) => (part.ok ? [] : part.refusals));
  if (notAimed.length > 0) return refuse(...notAimed);
  const parts = aimed.flatMap((part) => (part.ok ? [part.value] : []));
  const recipe = {
    ...(seed === undefined ? {} : { seed }),
    ...choices,
    parts,
    ...(goals === undefined ? {} : { goals }),
    ...toCutField(read.data.toCut),
    ...(ownLetters === undefined ? {} : { ownLetters }),
    ...(children === undefined ? {} : { children: children.map(groupChild) }),
    ...(sortedBy === undefined ? {} : { sortedBy }),
    ...(onlyWith === undefined ? {} : { onlyWith }),
    ...(made === undefined ? {} : { made }),
    ...(quick === undefined ? {} : { quick }),
  };
  const refusals = [...partRefusals(recipe), ...countRefusals(recipe)];
  return refusals.length > 0 ? refuse(...refusals) : accept(recipe);
}

/** What is said of paper and print; what is the usual may be said, and is not kept. */
export function writtenChoices({
  page = DEFAULT_PAGE,
  print = DEFAULT_PRINT,
  colours,
  pictures,
  onlyOwnPictures,
  hand,
  size,
  ink,
  letters,
}: WrittenChoices): PrintChoices {
  const { paper, orientation, margin } = page;
  return printChoicesOf({
    page: { paper, orientation, ...(margin === 'pocket' ? { margin } : {}) },
    print,
    ...coloursField(colours),
    ...(pictures === undefined
      ? {}
      : {
          pictures: {
            ids: pictures.map(ownPictureId),
            ...(onlyOwnPictures ? { alone: true } : {}),
          },
        }),
    ...(hand === 'left' ? { hand } : {}),
    ...(size === 'large' ? { size } : {}),
    ...(ink === 'saving' ? { ink } : {}),
    ...(letters === undefined ? {} : { letters }),
  });
}

export type WrittenChoices = Pick<
  z.infer<typeof recipeSchema>,
  | 'page'
  | 'print'
  | 'colours'
  | 'pictures'
  | 'onlyOwnPictures'
  | 'hand'
  | 'size'
  | 'ink'
  | 'letters'
>;

type WrittenPart = z.infer<ReturnType<typeof partSchema>>;

/** A part says its step, or how hard it is to be; then step and values are found that meet it. */
function aimedPart(part: WrittenPart, index: number, style: PrintStyle): Result<RecipePart> {
  const { step, difficulty } = part;
  const at = pathText('recipe', ['parts', index]);
  if (step !== undefined && difficulty !== undefined) {
    const expected = told('reasons', 'expected.step');
    return refuse({ code: 'unreadable', at: `${at} › difficulty`, got: 'step too', expected });
  }
  if (step !== undefined) return accept(recipePart(part, step, givenValues(part)));
  if (difficulty === undefined) {
    return refuse({
      code: 'missing',
      at: `${at} › step`,
      expected: told('reasons', 'expected.step'),
    });
  }
  const aim = aimAt(activityOf(part.activity), difficulty, givenValues(part), style);
  if (!aim.ok)
    return refuse(...aim.refusals.map((each) => ({ ...each, at: `${at} › ${each.at}` })));
  const { activity } = part;
  const values = changesOf({ activity, step: aim.value.step }, aim.value.values);
  return accept(recipePart(part, aim.value.step, values));
}

function givenValues({ values = {} }: WrittenPart): RecipePart['values'] {
  const given = Object.entries(values).filter(
    (entry): entry is [string, Value] => entry[1] !== undefined,
  );
  return Object.fromEntries(given);
}

function recipePart(
  { activity, tasks, sheets }: WrittenPart,
  step: number,
  values: RecipePart['values'],
): RecipePart {
  return { activity, step, values, ...(tasks === undefined ? {} : { tasks }), sheets };
}

/** What the activities refuse: values that cannot go together. */
function partRefusals({ parts, ...recipe }: Recipe): readonly Refusal[] {
  return parts.flatMap((part, index) => {
    const values = valuesOf({ ...part, ...styleOf(recipe) });
    return values.ok
      ? []
      : values.refusals.map((refusal) => ({
          ...refusal,
          at: `${pathText('recipe', ['parts', index])} › ${refusal.at}`,
        }));
  });
}

function groupChild({ name, shift }: z.infer<typeof childSchema>): GroupChild {
  return { name, ...(shift === undefined ? {} : { shift }) };
}

/** More sheets than a pack may hold, over all children. */
export function countRefusals({ parts, children }: Recipe): readonly Refusal[] {
  const each = parts.reduce((sum, part) => sum + part.sheets, 0);
  const sheets = each * (children?.length ?? 1);
  return sheets > MOST_SHEETS
    ? [
        {
          code: 'too-big',
          at: 'recipe › parts',
          got: sheets,
          max: MOST_SHEETS,
          unit: told('reasons', 'amount.sheets'),
        },
      ]
    : [];
}
