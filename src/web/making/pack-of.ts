// From what was entered to proven sheets.
import { accept, type Result } from '../../base/index.ts';
import {
  makePack,
  makeSheet,
  type OnProgress,
  type Pack,
  printChoicesOf,
  readChildren,
  readRecipe,
  type SeededRecipe,
} from '../../sheets/index.ts';
import type { Entries } from '../recipe/entries.ts';
import { withChanged } from './changed-sheets.ts';
import { fitValues } from './fit-values.ts';
import type { Group } from './protocol.ts';

/** The first `count` sheets of the pack that was asked for; all of them if `count` is left out. */
export function packOf(
  entries: Entries,
  count: number = entries.sheets,
  onProgress: OnProgress = () => {},
  group?: Group,
): Result<Pack> {
  const recipe = recipeOf(entries);
  if (!recipe.ok) return recipe;
  if (group !== undefined) return groupPackOf(recipe.value, group, onProgress);
  const made =
    entries.first === undefined
      ? makePack(withSheets(recipe.value, count), onProgress)
      : packFrom(recipe.value, entries.first, count, onProgress);
  return made.ok ? withChanged(made.value, entries.changed) : made;
}

/** The pack for each child of a group; a sheet that was opened by its code is not among them. */
function groupPackOf(
  recipe: SeededRecipe,
  { names, sortedBy }: Group,
  onProgress: OnProgress,
): Result<Pack> {
  const children = readChildren(names, 'group');
  if (!children.ok) return children;
  return makePack({ ...recipe, children: children.value, sortedBy }, onProgress);
}

/** A pack that begins with the sheet of a known seed. */
function packFrom(
  recipe: SeededRecipe,
  seed: number,
  count: number,
  onProgress: OnProgress,
): Result<Pack> {
  const { parts, goals } = recipe;
  const part = parts[0];
  if (part === undefined) throw new Error('recipe › parts: expected one, got none');
  const { sheets: _sheets, ...asked } = part;
  const first = makeSheet({ ...asked, seed, ...printChoicesOf(recipe) });
  if (!first.ok) return first;
  const named = goals === undefined ? {} : { goals };
  if (count === 1) return accept({ sheets: [first.value], ...named });
  const others = makePack(withSheets(recipe, count - 1), (made) => onProgress(made + 1, count));
  return others.ok ? accept({ sheets: [first.value, ...others.value.sheets], ...named }) : others;
}

function recipeOf(entries: Entries): Result<SeededRecipe> {
  const { activity, step, tasks, sheets, seed, paper, orientation, print } = entries;
  const { colours, goals, hand, size, ink, margin } = entries;
  const values = fitValues(entries).changes;
  const recipe = readRecipe({
    format: 'samewise.recipe',
    version: 1,
    seed,
    page: { paper, orientation, ...(margin === undefined ? {} : { margin }) },
    print,
    ...(colours === undefined ? {} : { colours }),
    ...(hand === undefined ? {} : { hand }),
    ...(size === undefined ? {} : { size }),
    ...(ink === undefined ? {} : { ink }),
    ...(goals === undefined ? {} : { goals }),
    parts: [{ activity, step, values, sheets, ...(tasks === undefined ? {} : { tasks }) }],
  });
  return recipe.ok ? accept({ ...recipe.value, seed }) : recipe;
}

function withSheets(recipe: SeededRecipe, sheets: number): SeededRecipe {
  return { ...recipe, parts: recipe.parts.map((part) => ({ ...part, sheets })) };
}
