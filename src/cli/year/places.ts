// Where the files of a child's year stand, and what stands there already.
import { existsSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { childFileName, MOST_CHILDREN, type SheetChild } from '../../sheets/index.ts';
import { attempt, whatStandsAt } from '../targets.ts';
import { FILE_KINDS, type FileKind } from './job.ts';

const PLAN = 'year.json';
const WEEK = new RegExp(`^week-\\d\\d\\.(${FILE_KINDS.join('|')})$`);

/** Such as `007-Wren`, whatever the size of the group. */
export function folderOf(out: string, child: SheetChild): string {
  return join(out, childFileName(child, MOST_CHILDREN));
}

export function planFileIn(folder: string): string {
  return join(folder, PLAN);
}

export function weekFileIn(folder: string, week: number, kind: FileKind): string {
  return join(folder, `week-${String(week).padStart(2, '0')}.${kind}`);
}

/** Whether every file of a week is there; each of them came whole. */
export function isWeekThere(folder: string, week: number, kinds: readonly FileKind[]): boolean {
  return kinds.every((kind) => whatStandsAt(weekFileIn(folder, week, kind))?.isFile() ?? false);
}

/** Whether the pack of any week is there. */
export function hasWeeks(folder: string): boolean {
  return namesIn(folder).some((name) => WEEK.test(name));
}

export function removeWeeks(folder: string): void {
  for (const name of namesIn(folder).filter((name) => WEEK.test(name))) {
    attempt(join(folder, name), () => rmSync(join(folder, name)));
  }
}

function namesIn(folder: string): readonly string[] {
  return existsSync(folder) ? attempt(folder, () => readdirSync(folder)) : [];
}
