// The pack file: what stands on a pack's sheets as JSON, so that anyone can prove it again.
import { type Activity, activityOf, type Task } from '../activities/index.ts';
import { ownPictureOf } from '../figures/index.ts';
import { difficultyOf } from '../learner/index.ts';
import type { Pack } from './pack.ts';
import type { Sheet } from './sheet.ts';

/** Characters of a pack file that are read, and that are worth writing: some thousand full sheets; a limit against slips. */
export const PACK_CHARACTERS = 40_000_000;

/** The file's text: a line for each task, so that two packs can be compared. */
export function packFileText(pack: Pack): string {
  const sheets = pack.sheets.map(sheetText).join(',\n');
  const chosen = pack.toCut ? `"toCut":${JSON.stringify(pack.toCut)},` : '';
  return `{"format":"samewise.pack","version":1,${chosen}${picturesText(pack)}"sheets":[\n${sheets}\n]}\n`;
}

/** The own pictures that the sheets name, so that the file stands alone. */
function picturesText({ sheets }: Pack): string {
  const named = sheets.flatMap(({ spec }) => spec.pictures?.ids ?? []);
  const pictures = [...new Set(named)].sort().map((id) => JSON.stringify(ownPictureOf(id)));
  return pictures.length === 0 ? '' : `"pictures":[\n${pictures.join(',\n')}\n],`;
}

function sheetText({ code, spec, tasks, child }: Sheet): string {
  const { activity, step, page, edits } = spec;
  const edited = edits === undefined ? undefined : true;
  const facts = JSON.stringify({ code, activity, step, page, child, edited }).slice(0, -1);
  const lines = tasks.map((task) =>
    JSON.stringify({ ...taskFacts(task), difficulty: difficultyFacts(activityOf(activity), task) }),
  );
  return `${facts},"tasks":[\n${lines.join(',\n')}\n]}`;
}

/** How hard a task is, in logits to 0.01: in all, and what each feature adds to the base. */
export interface DifficultyFacts {
  readonly logits: number;
  readonly parts: Readonly<Record<string, number | undefined>>;
}

export function difficultyFacts(activity: Activity, { printed }: Task): DifficultyFacts {
  const { logits, parts } = difficultyOf(activity, printed);
  return {
    logits,
    parts: Object.fromEntries(parts.map((part) => [part.feature, part.logits])),
  };
}

/** Printed facts and answer side by side. */
export function taskText(task: Task): string {
  return JSON.stringify(taskFacts(task));
}

export function taskFacts({ printed, answer }: Task): Readonly<Record<string, unknown>> {
  return { ...(printed as Readonly<Record<string, unknown>>), answer };
}
