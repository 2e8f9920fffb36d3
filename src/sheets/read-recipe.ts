// Reading a recipe: from the text of a file, or from values that came in, to one that packs can be made from.
import { activityOf, type Value, withNearestContent } from '../activities/index.ts';
import { accept, type Refusal, type Result, refuse, told } from '../base/index.ts';
import { ownPictureId } from '../figures/index.ts';
import { aimAt } from '../learner/index.ts';
import type { PrintStyle } from '../page/index.ts';
import { readJson } from './json-text.ts';
import { knowPictures } from './own-pictures.ts';
import { pathText, refusalsUnder } from './path-text.ts';
import { countRefusals, type GroupChild, type Recipe, type RecipePart } from './recipe.ts';
import {
  RECIPE_FORMAT,
  recipeSchema,
  type WrittenPart,
  type WrittenRecipe,
} from './recipe-schema.ts';
import { refusalsOf } from './schema-refusals.ts';
import {
  coloursField,
  DEFAULT_PAGE,
  DEFAULT_PRINT,
  type PrintChoices,
  printChoicesOf,
  styleOf,
} from './sheet-spec.ts';
import { changesOf, valuesOf } from './sheet-values.ts';
import { toCutField } from './to-cut.ts';
import { versionRefusal } from './version-refusal.ts';

/** A recipe is written by hand or by a form; more than this is none (about 1 MB). */
export const RECIPE_CHARACTERS = 1_000_000;

/** Reads a recipe from the text of a file; refuses too much of it before parsing. */
export function readRecipeText(text: string): Result<Recipe> {
  const json = readJson(text, 'recipe', { characters: RECIPE_CHARACTERS });
  return json.ok ? readRecipe(json.value) : json;
}

/** Reads a recipe; refuses unknown fields and values that no sheet can be made from, with their paths. */
export function readRecipe(given: unknown): Result<Recipe> {
  const version = versionRefusal(given, RECIPE_FORMAT, 'recipe');
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
  WrittenRecipe,
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
  if (!aim.ok) return refuse(...refusalsUnder(at, aim.refusals));
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
    return values.ok ? [] : refusalsUnder(pathText('recipe', ['parts', index]), values.refusals);
  });
}

function groupChild({ name, shift }: NonNullable<WrittenRecipe['children']>[number]): GroupChild {
  return { name, ...(shift === undefined ? {} : { shift }) };
}
