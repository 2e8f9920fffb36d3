// What a sheet and its cutting out ask for: the things on the table, the movement of the hand.
import { activityOf, type Features, handLevel, type Material } from '../activities/index.ts';
import type { PaperName } from '../page/index.ts';
import { enlargedMaterials } from './large.ts';
import { hasPieces } from './piece-pages.ts';
import { placedTasks } from './placed-tasks.ts';
import type { Sheet } from './sheet.ts';
import type { ToCut } from './to-cut.ts';

/** With pieces the child cuts out and sticks in, whatever else the sheet would have it do. */
function isWithPieces(sheet: Sheet, toCut: readonly ToCut[]): boolean {
  return toCut.includes('pieces') && hasPieces(sheet);
}

/** What a task takes, or the page that it stands on. */
export type SheetMaterial =
  | Material
  | { readonly kind: 'pockets' }
  | { readonly kind: 'paper'; readonly paper: PaperName };

/** Whether the sheet itself shows pieces to be cut out. */
export function hasPiecesOnSheet({ spec, tasks }: Sheet): boolean {
  const { materials } = activityOf(spec.activity);
  return tasks.some((task) => materials(task).some(({ kind }) => kind === 'scissors'));
}

/** Whether the child cuts pieces out, of the sheet or of a page that goes with it. */
export function cutsPieces(sheet: Sheet, toCut: readonly ToCut[] = []): boolean {
  return isWithPieces(sheet, toCut) || hasPiecesOnSheet(sheet);
}

/** What is laid out for a sheet that is printed with this to be cut out. */
export function materialsToDo(
  sheet: Sheet,
  toCut: readonly ToCut[] = [],
): readonly SheetMaterial[] {
  const { paper, margin } = sheet.spec.page;
  const own = [...ofTasks(sheet, toCut), { kind: 'paper', paper } as const];
  if (margin !== 'pocket') return own;
  // Nothing is stuck to a pocket that is to be used again.
  return [...own.filter(({ kind }) => kind !== 'glue'), { kind: 'pockets' }];
}

function ofTasks(sheet: Sheet, toCut: readonly ToCut[]): readonly Material[] {
  if (isWithPieces(sheet, toCut)) return [{ kind: 'scissors' }, { kind: 'glue' }];
  const own = materialsOf(sheet);
  return toCut.includes('cards') || toCut.includes('key-card')
    ? [...own, { kind: 'scissors' }]
    : own;
}

/** In large print the stickers are larger, too. */
function materialsOf(sheet: Sheet): readonly Material[] {
  const { materials } = activityOf(sheet.spec.activity);
  const own = sheet.tasks.flatMap((task) => materials(task));
  if (sheet.spec.size === undefined) return own;
  return enlargedMaterials(own, placedTasks(sheet)[0]?.times ?? 1);
}

/** What makes each task easy or hard, the hand that cuts included. */
export function featuresToDo(sheet: Sheet, toCut: readonly ToCut[] = []): readonly Features[] {
  const { features } = activityOf(sheet.spec.activity);
  const own = sheet.tasks.map(({ printed }) => features(printed));
  return isWithPieces(sheet, toCut)
    ? own.map((each) => ({ ...each, hand: handLevel('cut') }))
    : own;
}
