// What a sheet and its cutting out ask for: the things on the table, the movement of the hand.
import { activityOf, type Features, handLevel, type Material } from '../activities/index.ts';
import type { PaperName } from '../page/index.ts';
import { hasPieces } from './piece-pages.ts';
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

/** What is laid out for a sheet that is printed with this to be cut out. */
export function materialsToDo(
  sheet: Sheet,
  toCut: readonly ToCut[] = [],
): readonly SheetMaterial[] {
  const { paper, margin } = sheet.spec.page;
  return [
    ...ofTasks(sheet, toCut),
    { kind: 'paper', paper },
    ...(margin === 'pocket' ? [{ kind: 'pockets' } as const] : []),
  ];
}

function ofTasks(sheet: Sheet, toCut: readonly ToCut[]): readonly Material[] {
  if (isWithPieces(sheet, toCut)) return [{ kind: 'scissors' }, { kind: 'glue' }];
  const { materials } = activityOf(sheet.spec.activity);
  const own = sheet.tasks.flatMap((task) => materials(task));
  return toCut.includes('cards') || toCut.includes('key-card')
    ? [...own, { kind: 'scissors' }]
    : own;
}

/** What makes each task easy or hard, the hand that cuts included. */
export function featuresToDo(sheet: Sheet, toCut: readonly ToCut[] = []): readonly Features[] {
  const { features } = activityOf(sheet.spec.activity);
  const own = sheet.tasks.map(({ printed }) => features(printed));
  return isWithPieces(sheet, toCut)
    ? own.map((each) => ({ ...each, hand: handLevel('cut') }))
    : own;
}
