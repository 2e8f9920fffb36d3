// The recipe in the layout that is quickest by hand, measured by the model of minutes itself.
import { activityOf, type Value } from '../activities/index.ts';
import { makeSheet, printChoicesOf, type Recipe, type RecipePart } from '../sheets/index.ts';
import { makeGuide } from './guide.ts';

/** Any seed will do: the same for all ways that are compared. */
const TRIED_SEEDS = [1, 2, 3];
/** A difference of less than this is none, in minutes. */
const SAME_MINUTES = 0.01;

/**
 * Each part with one task on a page; with figures in a row where that is quicker, since a row can be had by folding;
 * and with stickers for a response where the child would otherwise draw. Everything else stays as asked.
 */
export function quickRecipe(recipe: Recipe): Recipe {
  return { ...recipe, parts: recipe.parts.map((part) => quickPart(part, recipe)) };
}

function quickPart(part: RecipePart, recipe: Recipe): RecipePart {
  const asked = { ...part, tasks: 1 };
  const candidates = [asked, ...changed(asked)];
  let best: { readonly part: RecipePart; readonly minutes: number } | undefined;
  for (const candidate of candidates) {
    const minutes = minutesOf(candidate, recipe);
    if (minutes === undefined) continue;
    if (!best || minutes < best.minutes - SAME_MINUTES) best = { part: candidate, minutes };
  }
  return best?.part ?? asked;
}

/** The part with a sticker for a response where one has to be drawn, then with each layout that there is. */
function changed(part: RecipePart): readonly RecipePart[] {
  const { parameters, ladder } = activityOf(part.activity);
  const inForce = { ...ladder[part.step - 1]?.values, ...part.values };
  const drawn = inForce.response !== 'point' && inForce.response !== 'sticker';
  const responses = drawn ? choicesOf(parameters.response, 'sticker') : [];
  const layouts = choicesOf(parameters.layout, 'row');
  const ways: readonly Readonly<Record<string, Value>>[] = [
    ...layouts.map((layout) => ({ layout })),
    ...responses.map((response) => ({ response })),
    ...responses.flatMap((response) => layouts.map((layout) => ({ response, layout }))),
  ];
  return ways.map((values) => ({ ...part, values: { ...part.values, ...values } }));
}

function choicesOf(
  parameter: { readonly kind: string; readonly values?: readonly string[] } | undefined,
  wanted: string,
): readonly string[] {
  return parameter?.values?.includes(wanted) ? [wanted] : [];
}

/** The mean over a few sheets; undefined: the values cannot go together. */
function minutesOf(part: RecipePart, recipe: Recipe): number | undefined {
  const { activity, step, values, tasks } = part;
  const all = TRIED_SEEDS.flatMap((seed) => {
    const asked = { activity, step, values, seed, ...printChoicesOf(recipe) };
    const sheet = makeSheet(tasks === undefined ? asked : { ...asked, tasks });
    const guide = sheet.ok ? makeGuide(sheet.value) : sheet;
    return guide.ok ? [guide.value.minutes] : [];
  });
  if (all.length < TRIED_SEEDS.length) return undefined;
  return all.reduce((sum, minutes) => sum + minutes, 0) / all.length;
}
