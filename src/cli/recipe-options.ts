// The options of `samewise pack`, or a recipe file, as a recipe.
import { activityOf } from '../activities/index.ts';
import { MAX_SEED } from '../base/index.ts';
import { picturesField } from '../figures/index.ts';
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
import {
  changesOf,
  DEFAULT_PAGE,
  DEFAULT_PRINT,
  FRAMEWORKS,
  type Framework,
  MOST_SHEETS,
  MOST_TASKS,
  type PrintChoices,
  RECIPE_CHARACTERS,
  type Recipe,
  type RecipePart,
  readRecipeText,
  SIZES,
  stepForAge,
  styleOf,
  toCutField,
  valuesOf,
  writtenChoices,
} from '../sheets/index.ts';
import { SHELL_WORDS } from '../words/index.ts';
import { accepted, Refused } from './failure.ts';
import { type GroupOptions, groupOf } from './group-options.ts';
import { nameOf } from './name-options.ts';
import {
  activityIdOf,
  choiceOf,
  coloursIn,
  numberOf,
  parameterValues,
  wholeOf,
} from './option-values.ts';
import { readText } from './read-text.ts';
import { stockOf } from './stock-option.ts';
import { tell } from './terminal.ts';

/** The options that say what to make, as they are typed. */
export interface RecipeOptions extends GroupOptions {
  readonly activity?: string;
  readonly step?: string;
  readonly age?: string;
  readonly difficulty?: string;
  readonly tasks?: string;
  readonly sheets?: string;
  readonly seed?: string;
  readonly paper?: string;
  readonly orientation?: string;
  readonly print?: string;
  readonly colours?: string;
  readonly hand?: string;
  readonly size?: string;
  readonly ink?: string;
  readonly margin?: string;
  readonly lettersOf?: string;
  readonly set: readonly string[];
  readonly goals?: string;
  readonly recipe?: string;
  readonly stock?: string;
}

const AGES = { min: 3, max: 5 } as const;

/** Refuses, by the name of the option, whatever no pack can be made from; a seed may be missing. */
export function recipeOf(options: RecipeOptions): Recipe {
  const base = options.recipe === undefined ? undefined : recipeFromFile(options.recipe, options);
  const choices = choicesOf(options, base);
  const style = styleOf(choices);
  const seed =
    options.seed === undefined ? base?.seed : wholeOf(options.seed, '--seed', 0, MAX_SEED);
  const goals = options.goals === undefined ? base?.goals : frameworksOf(options.goals);
  return {
    ...choices,
    ...(seed === undefined ? {} : { seed }),
    parts: base?.parts ?? [partOf(options, style)],
    ...(goals === undefined ? {} : { goals }),
    ...toCutField(base?.toCut),
    ...groupOf(options, base),
    ...stockOf(options.stock, base),
    ...(base?.made === undefined ? {} : { made: base.made }),
    ...(base?.quick === undefined ? {} : { quick: base.quick }),
  };
}

/** Paper and print: what the options say, else the recipe, else the usual. */
function choicesOf(options: RecipeOptions, base: Recipe | undefined): PrintChoices {
  const page = base?.page ?? DEFAULT_PAGE;
  const { paper = page.paper, orientation = page.orientation, margin = page.margin } = options;
  const { print = base?.print ?? DEFAULT_PRINT } = options;
  const { hand = base?.hand, size = base?.size, ink = base?.ink } = options;
  const colours = options.colours === undefined ? base?.colours : coloursIn(options.colours);
  const letters =
    options.lettersOf === undefined ? base?.letters : nameOf(options.lettersOf, '--letters-of');
  const written = writtenChoices({
    page: {
      paper: choiceOf(paper, '--paper', PAPER_NAMES),
      orientation: choiceOf(orientation, '--orientation', ORIENTATIONS),
      margin: choiceOf(margin ?? 'usual', '--margin', MARGINS),
    },
    print: choiceOf(print, '--print', PRINT_CHOICES),
    hand: choiceOf(hand ?? 'right', '--hand', HANDS),
    size: choiceOf(size ?? 'usual', '--size', SIZES),
    ink: choiceOf(ink ?? 'full', '--ink', INKS),
    ...(colours === undefined ? {} : { colours: [...colours] }),
    ...(letters === undefined ? {} : { letters }),
  });
  // Own pictures come with a recipe file; no option names any.
  return { ...written, ...picturesField(base?.pictures) };
}

/** Curricula by their names, with commas between. */
function frameworksOf(names: string): readonly Framework[] {
  return names.split(',').map((name) => choiceOf(name.trim(), '--goals', FRAMEWORKS));
}

function recipeFromFile(path: string, options: RecipeOptions): Recipe {
  const { activity, step, age, difficulty, tasks, sheets, set } = options;
  const also = Object.entries({ activity, step, age, difficulty, tasks, sheets, set: set[0] });
  const found = also.find(([, value]) => value !== undefined);
  if (found) {
    const expected = 'either a recipe or the options of one activity';
    throw new Refused({ code: 'unreadable', at: `--${found[0]}`, got: '--recipe too', expected });
  }
  return accepted(readRecipeText(readText(path, 'recipe', RECIPE_CHARACTERS)));
}

function partOf(options: RecipeOptions, style: PrintStyle): RecipePart {
  if (options.activity === undefined) {
    const expected = 'an activity (--activity in-every-box) or a recipe (--recipe recipe.json)';
    throw new Refused({ code: 'missing', at: 'pack', expected });
  }
  const activity = activityIdOf(options.activity, '--activity');
  const values = parameterValues(options.set, activityOf(activity));
  const { tasks, sheets } = options;
  return {
    activity,
    ...(options.difficulty === undefined
      ? atStep(options, activity, values, style)
      : aimedAt(options, activity, values, style)),
    sheets: sheets === undefined ? 1 : wholeOf(sheets, '--sheets', 1, MOST_SHEETS),
    ...(tasks === undefined ? {} : { tasks: wholeOf(tasks, '--tasks', 1, MOST_TASKS) }),
  };
}

function atStep(
  options: RecipeOptions,
  activity: RecipePart['activity'],
  values: RecipePart['values'],
  style: PrintStyle,
): Pick<RecipePart, 'step' | 'values'> {
  const step = stepOf(options, activity);
  accepted(valuesOf({ activity, step, values, ...style }));
  return { step, values };
}

/** Step and values that meet the difficulty asked for; tells what they are. */
function aimedAt(
  { difficulty = '', step, age }: RecipeOptions,
  activity: RecipePart['activity'],
  values: RecipePart['values'],
  style: PrintStyle,
): Pick<RecipePart, 'step' | 'values'> {
  refuseTogether({ '--step': step, '--age': age }, '--difficulty');
  const target = numberOf(difficulty, '--difficulty');
  const aim = accepted(aimAt(activityOf(activity), target, values, style));
  const changes = changesOf({ activity, step: aim.step }, aim.values);
  const settings = Object.entries(changes).map(([name, value]) => `${name}=${value}`);
  tell(SHELL_WORDS.aimed(activity, aim.step, settings, aim.logits));
  return { step: aim.step, values: changes };
}

function stepOf({ step, age }: RecipeOptions, activity: RecipePart['activity']): number {
  if (age !== undefined) {
    refuseTogether({ '--step': step }, '--age');
    return stepForAge(activity, wholeOf(age, '--age', AGES.min, AGES.max));
  }
  const { length } = activityOf(activity).ladder;
  return step === undefined ? 1 : wholeOf(step, '--step', 1, length);
}

/** One of several ways to say how hard the sheets are to be. */
function refuseTogether(others: Readonly<Record<string, string | undefined>>, at: string): void {
  const other = Object.keys(others).find((name) => others[name] !== undefined);
  if (other === undefined) return;
  const expected = 'one of --step, --age and --difficulty';
  throw new Refused({ code: 'unreadable', at, got: `${other} too`, expected });
}
