// The pack of a recipe: for a group where it names children, else for nobody in particular.
import { accept, type Result } from '../base/index.ts';
import { makeGroupPack } from './group.ts';
import { makePlainPack, type OnProgress, type Pack, type SeededRecipe } from './pack.ts';
import { toCutField } from './to-cut.ts';

/** Always the same pack. Refuses what no pack can be made from, and more different sheets than there are. */
export function makePack(recipe: SeededRecipe, onProgress: OnProgress = () => {}): Result<Pack> {
  const make = recipe.children === undefined ? makePlainPack : makeGroupPack;
  const pack = make(recipe, onProgress);
  if (!pack.ok) return pack;
  const { goals, toCut } = recipe;
  return accept({
    ...pack.value,
    ...(goals === undefined ? {} : { goals }),
    ...toCutField(toCut),
  });
}
