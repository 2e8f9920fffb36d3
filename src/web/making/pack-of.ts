// From what was entered to proven sheets.
import { accept, type Result, refuse, told } from '../../base/index.ts';
import { quickRecipe } from '../../by-hand/index.ts';
import { isOwnKnown, ownPictureOf } from '../../figures/index.ts';
import {
  makeSheet,
  type OnProgress,
  type Pack,
  printChoicesOf,
  readChildren,
  readRecipe,
  type SeededRecipe,
  toCutField,
} from '../../sheets/index.ts';
import { makePackAtHand } from '../../supplies/index.ts';
import { type Entries, isPrinted } from '../recipe/entries.ts';
import { withChanged } from './changed-sheets.ts';
import { fitValues } from './fit-values.ts';
import type { Group } from './protocol.ts';

/** A pack that is asked for. */
export interface PackAsked {
  readonly entries: Entries;
  /** Absent: for nobody in particular. */
  readonly group?: Group | undefined;
}

/** The whole pack, with its changed sheets. */
export function packOf(asked: PackAsked, onProgress: OnProgress = () => {}): Result<Pack> {
  const pack = packAsMade(asked, Infinity, onProgress);
  return pack.ok ? withChanged(pack.value, asked.entries.changed) : pack;
}

/** At least the first `count` sheets of the pack, without what was changed on them. */
export function packAsMade(
  { entries, group }: PackAsked,
  count: number,
  onProgress: OnProgress = () => {},
): Result<Pack> {
  const recipe = recipeOf(entries);
  if (!recipe.ok) return recipe;
  if (group !== undefined) return groupPackOf(recipe.value, group, count, onProgress);
  const wanted = Math.min(count, entries.sheets);
  return entries.first === undefined
    ? makePackAtHand(firstOf(recipe.value, wanted), onProgress)
    : packFrom(recipe.value, entries.first, wanted, onProgress);
}

/** How many sheets the whole pack has. Refuses names that no group can be made of. */
export function sheetsOf({ entries, group }: PackAsked): Result<number> {
  if (group === undefined) return accept(entries.sheets);
  const children = readChildren(group.names, 'group');
  return children.ok ? accept(children.value.length * entries.sheets) : children;
}

/** The pack for each child of a group; a sheet that was opened by its code is not among them. */
function groupPackOf(
  recipe: SeededRecipe,
  { names, sortedBy }: Group,
  count: number,
  onProgress: OnProgress,
): Result<Pack> {
  const children = readChildren(names, 'group');
  if (!children.ok) return children;
  const each = recipe.parts.reduce((sum, { sheets }) => sum + sheets, 0);
  const wanted = { ...recipe, children: children.value, sortedBy };
  return makePackAtHand(wanted, onProgress, Math.ceil(count / each));
}

/** A pack that begins with the sheet of a known seed. */
function packFrom(
  recipe: SeededRecipe,
  seed: number,
  count: number,
  onProgress: OnProgress,
): Result<Pack> {
  const { parts, goals, toCut } = recipe;
  const part = parts[0];
  if (part === undefined) throw new Error('recipe › parts: expected one, got none');
  const { sheets: _sheets, ...asked } = part;
  const first = makeSheet({ ...asked, seed, ...printChoicesOf(recipe) });
  if (!first.ok) return first;
  const named = { ...(goals === undefined ? {} : { goals }), ...toCutField(toCut) };
  if (count === 1) return accept({ sheets: [first.value], ...named });
  const others = makePackAtHand(withSheets(recipe, count - 1), (made) =>
    onProgress(made + 1, count),
  );
  return others.ok ? accept({ sheets: [first.value, ...others.value.sheets], ...named }) : others;
}

function recipeOf(entries: Entries): Result<SeededRecipe> {
  const { activity, step, tasks, sheets, seed, paper, orientation, print } = entries;
  const {
    colours,
    letters,
    ownLetters,
    goals,
    toCut,
    hand,
    size,
    ink,
    margin,
    made,
    quick,
    atHand,
    stock,
  } = entries;
  if (atHand && stock === undefined) {
    return refuse({ code: 'missing', at: 'onlyWith', expected: told('reasons', 'expected.stock') });
  }
  const { pictures = [], onlyOwn } = entries;
  const lacking = pictures.filter((id) => !isOwnKnown(id));
  if (lacking.length > 0) {
    return refuse({ code: 'pictures-not-here', at: 'own pictures', got: lacking.join(', ') });
  }
  const values = fitValues(entries).changes;
  const recipe = readRecipe({
    format: 'samewise.recipe',
    version: 1,
    seed,
    page: { paper, orientation, ...(margin === undefined ? {} : { margin }) },
    print,
    ...(colours === undefined ? {} : { colours }),
    ...(pictures.length === 0 ? {} : { pictures: pictures.map(ownPictureOf) }),
    ...(onlyOwn ? { onlyOwnPictures: true } : {}),
    ...(letters === undefined ? {} : { letters }),
    ...(ownLetters === 'yes' ? { ownLetters: true } : {}),
    ...(hand === undefined ? {} : { hand }),
    ...(size === undefined ? {} : { size }),
    ...(ink === undefined ? {} : { ink }),
    ...(made === undefined ? {} : { made }),
    ...(goals === undefined ? {} : { goals }),
    ...(toCut === undefined || !isPrinted(entries) ? {} : { toCut }),
    ...(atHand && stock !== undefined ? { onlyWith: stock } : {}),
    parts: [{ activity, step, values, sheets, ...(tasks === undefined ? {} : { tasks }) }],
  });
  if (!recipe.ok) return recipe;
  const isQuick = made === 'by-hand' && quick === 'yes';
  return accept({ ...(isQuick ? quickRecipe(recipe.value) : recipe.value), seed });
}

/** What a house has is shared out over the whole pack, so that its first sheets hang on all. */
function firstOf(recipe: SeededRecipe, count: number): SeededRecipe {
  return recipe.onlyWith === undefined ? withSheets(recipe, count) : recipe;
}

function withSheets(recipe: SeededRecipe, sheets: number): SeededRecipe {
  return { ...recipe, parts: recipe.parts.map((part) => ({ ...part, sheets })) };
}
