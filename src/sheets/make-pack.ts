// The pack of a recipe: for a group where it names children, else for nobody in particular.
import { accept, type Result, refuse } from '../base/index.ts';
import { makeGroupPack } from './group.ts';
import { makePlainPack, type OnProgress, type Pack, type SeededRecipe } from './pack.ts';
import { countRefusals } from './recipe.ts';
import { toCutField } from './to-cut.ts';

/**
 * Always the same pack. Refuses what no pack can be made from, and more different sheets than there are. What a house
 * has is not known here: a recipe that asks for it is made by `makePackAtHand` of the supplies. `first`: of
 * a group, the sheets of so many of its first children alone, as they are in the whole pack.
 */
export function makePack(
  recipe: SeededRecipe,
  onProgress: OnProgress = () => {},
  first?: number,
): Result<Pack> {
  if (recipe.onlyWith !== undefined)
    throw new Error('pack: expected no onlyWith here, got a stock');
  const refusals = countRefusals(recipe);
  if (refusals.length > 0) return refuse(...refusals);
  const pack =
    recipe.children === undefined
      ? makePlainPack(recipe, onProgress)
      : makeGroupPack(recipe, onProgress, first);
  if (!pack.ok) return pack;
  const { goals, toCut } = recipe;
  return accept({
    ...pack.value,
    ...(goals === undefined ? {} : { goals }),
    ...toCutField(toCut),
  });
}
