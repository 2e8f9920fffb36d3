// `samewise pack`: from options or a recipe file to a proven pack on disk.
import { getRandomValues } from 'node:crypto';
import { type MadeWishes, quickRecipe } from '../by-hand/index.ts';
import type { Pack, Recipe } from '../sheets/index.ts';
import { houseFor, makePackAtHand, usedBy, usesOf, usualStickerMm } from '../supplies/index.ts';
import { SHELL_WORDS } from '../words/index.ts';
import { refuseNothingToCut, withCutOptions } from './cut-options.ts';
import { accepted, Refused } from './failure.ts';
import { isQuick, madeOf, refuseUnmade } from './made-options.ts';
import { nameLines } from './name-options.ts';
import { checkOutputs, type Outputs } from './outputs.ts';
import { type RecipeOptions, recipeOf } from './recipe-options.ts';
import { showProgress, tell } from './terminal.ts';

export type PackOptions = RecipeOptions & Outputs;

const words = SHELL_WORDS;

/** Makes and writes the pack; refuses whatever cannot be read, made or written, before anything takes its place. */
export async function runPack(options: PackOptions): Promise<void> {
  const asked = withCutOptions(recipeOf(options), options);
  const wishes = madeOf(options, asked);
  const wanted = { ...asked, made: wishes.made ?? 'printed' };
  const recipe = isQuick(options, asked, wishes) ? quickRecipe(wanted) : wanted;
  refuseNoGroup(recipe, options);
  checkOutputs(options, recipe.page);
  for (const line of nameLines(recipe)) tell(line);
  const seed = recipe.seed ?? chosenSeed();
  const pack = accepted(makePackAtHand({ ...recipe, seed }, showProgress(words.proving)));
  refuseNothingToCut(pack);
  if (recipe.seed === undefined) tell(words.seedChosen(seed));
  if (recipe.onlyWith?.printer === 'none' && wanted.made !== 'by-hand') tell(words.noPrinter);
  await writeProven(pack, options, 'pack', atHand(wishes, recipe), houseLines(pack, recipe));
}

/** By hand and half-made with the stickers that were asked for, or else with those of the house. */
function atHand(wishes: MadeWishes, { onlyWith }: Recipe): MadeWishes {
  if (wishes.stickerMm !== undefined || onlyWith === undefined) return wishes;
  return { ...wishes, stickerMm: usualStickerMm(onlyWith) };
}

/** What the pack takes of what there is; nothing where that was not said. */
function houseLines({ sheets }: Pack, { onlyWith, made, toCut }: Recipe): readonly string[] {
  if (onlyWith === undefined) return [];
  const used = usedBy(sheets, houseFor(onlyWith, { made, toCut }));
  return [words.fromTheHouse(usesOf(used, onlyWith))];
}

/** One PDF for each child needs children. */
function refuseNoGroup({ children }: Recipe, { perChild }: Outputs): void {
  if (perChild === undefined || children !== undefined) return;
  const expected = 'a group (--children "Wren, Moss")';
  throw new Refused({ code: 'missing', at: '--per-child', expected });
}

/** Tells what was proven, and `more`, and writes it. What writes PDF is loaded only here: it is half of the start. */
export async function writeProven(
  pack: Pack,
  outputs: Outputs,
  usual: string,
  wishes: MadeWishes,
  more: readonly string[] = [],
): Promise<void> {
  refuseUnmade(pack, wishes);
  for (const line of [packLine(pack), ...more]) tell(line);
  const [{ inkLine }, { writePack }] = await Promise.all([
    import('./ink-line.ts'),
    import('./write-pack.ts'),
  ]);
  if ((wishes.made ?? 'printed') === 'printed') tell(inkLine(pack));
  await writePack(pack, { ...outputs, wishes }, usual);
}

function packLine({ sheets }: Pack): string {
  const tasks = sheets.reduce((sum, sheet) => sum + sheet.tasks.length, 0);
  const doubts = sheets.reduce((sum, sheet) => sum + (sheet.doubts?.length ?? 0), 0);
  return words.packMade(sheets.length, tasks, doubts);
}

function chosenSeed(): number {
  const [seed = 0] = getRandomValues(new Uint32Array(1));
  return seed;
}
