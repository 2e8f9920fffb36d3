// The pack of a recipe: for a group where it names children, else for nobody in particular.
import { accept, type Result } from '../base/index.ts';
import { makeGroupPack } from './group.ts';
import { makePlainPack, type OnProgress, type Pack, type SeededRecipe } from './pack.ts';

/** A recipe that asks for nothing of what the house has: the supplies know how to make one that does. */
export type FreeRecipe = SeededRecipe & { readonly onlyWith?: never };

/** Always the same pack. Refuses what no pack can be made from, and more different sheets than there are. */
export function makePack(recipe: FreeRecipe, onProgress: OnProgress = () => {}): Result<Pack> {
  const make = recipe.children === undefined ? makePlainPack : makeGroupPack;
  const pack = make(recipe, onProgress);
  const { goals } = recipe;
  return pack.ok && goals !== undefined ? accept({ ...pack.value, goals }) : pack;
}
