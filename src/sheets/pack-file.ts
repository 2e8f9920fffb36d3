// The pack file: what stands on a pack's sheets as JSON, so that anyone can prove it again.
import type { Task } from '../activities/index.ts';
import type { Pack } from './pack.ts';
import type { Sheet } from './sheet.ts';

/** Characters of a pack file that are read, and that are worth writing: some thousand full sheets; a limit against slips. */
export const PACK_CHARACTERS = 40_000_000;

/** The file's text: a line for each task, so that two packs can be compared. */
export function packFileText(pack: Pack): string {
  const sheets = pack.sheets.map(sheetText).join(',\n');
  return `{"format":"samewise.pack","version":1,"sheets":[\n${sheets}\n]}\n`;
}

function sheetText({ code, spec, tasks }: Sheet): string {
  const { activity, step, page } = spec;
  const facts = JSON.stringify({ code, activity, step, page }).slice(0, -1);
  return `${facts},"tasks":[\n${tasks.map(taskText).join(',\n')}\n]}`;
}

/** Printed facts and answer side by side. */
export function taskText(task: Task): string {
  return JSON.stringify(taskFacts(task));
}

export function taskFacts({ printed, answer }: Task): Readonly<Record<string, unknown>> {
  return { ...(printed as Readonly<Record<string, unknown>>), answer };
}
