// Sheets and their guides for tests: of every activity, every step, with one task and with as many as the step has.
import { ACTIVITY_IDS, type ActivityId, activityOf, type Value } from '../activities/index.ts';
import type { PageChoice } from '../page/index.ts';
import { makeSheet, type Sheet } from '../sheets/index.ts';
import { type Guide, type GuideWishes, makeGuide } from './guide.ts';

export interface SheetWishes {
  readonly tasks?: number;
  readonly values?: Readonly<Record<string, Value>>;
  readonly page?: PageChoice;
  readonly print?: 'colour' | 'grey';
}

const A4: PageChoice = { paper: 'A4', orientation: 'portrait' };

export function sheetOf(
  activity: ActivityId,
  step: number,
  seed: number,
  { tasks, values = {}, page = A4, print = 'colour' }: SheetWishes = {},
): Sheet {
  const asked = { activity, step, values, seed, page, print };
  const made = makeSheet(tasks === undefined ? asked : { ...asked, tasks });
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  return made.value;
}

export function guideOf(sheet: Sheet, wishes: GuideWishes = {}): Guide {
  const guide = makeGuide(sheet, wishes);
  if (!guide.ok) throw new Error(`${sheet.code}: ${JSON.stringify(guide.refusals)}`);
  return guide.value;
}

/** By activity, for each step a sheet of one task and a whole one. */
export function sheetsOfAll(
  seed: number,
): readonly { readonly id: ActivityId; readonly sheets: () => readonly Sheet[] }[] {
  return ACTIVITY_IDS.map((id) => ({
    id,
    sheets: () =>
      activityOf(id).ladder.flatMap((_, index) => [
        sheetOf(id, index + 1, seed + index, { tasks: 1 }),
        sheetOf(id, index + 1, seed + index),
      ]),
  }));
}
