// Where the files of a child's year stand, and what stands there already.
import { existsSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { childFileName, MOST_CHILDREN, type SheetChild } from '../../sheets/index.ts';
import { attempt, whatStandsAt } from '../targets.ts';
import { FILE_KINDS, type FileKind } from './job.ts';
import { type IsAsMade, sumsFileIn } from './sums.ts';

const PLAN = 'year.json';
const WEEK = new RegExp(`^week-\\d\\d\\.(${FILE_KINDS.join('|')})$`);

/** Such as `007-Wren`, whatever the size of the group. */
export function folderOf(out: string, child: SheetChild): string {
  return join(out, childFileName(child, MOST_CHILDREN));
}

export function planFileIn(folder: string): string {
  return join(folder, PLAN);
}

export function weekFileName(week: number, kind: FileKind): string {
  return `week-${String(week).padStart(2, '0')}.${kind}`;
}

/**
 * How the files of a week stand: one of them is `changed`, that is not as it was made; else all of them are `there`, as
 * they were made; or some are `missing`.
 */
export function standOfWeek(
  folder: string,
  week: number,
  kinds: readonly FileKind[],
  isAsMade: IsAsMade,
): 'there' | 'missing' | 'changed' {
  const names = kinds.map((kind) => weekFileName(week, kind));
  const there = names.filter((name) => whatStandsAt(join(folder, name))?.isFile() ?? false);
  if (!there.every(isAsMade)) return 'changed';
  return there.length === names.length ? 'there' : 'missing';
}

/** Whether the pack of any week is there. */
export function hasWeeks(folder: string): boolean {
  return namesIn(folder).some((name) => WEEK.test(name));
}

/** Packs first, then the sums of them. */
export function removeWeeks(folder: string): void {
  const packs = namesIn(folder).filter((name) => WEEK.test(name));
  for (const path of [...packs.map((name) => join(folder, name)), sumsFileIn(folder)]) {
    attempt(path, () => rmSync(path, { force: true }));
  }
}

function namesIn(folder: string): readonly string[] {
  return existsSync(folder) ? attempt(folder, () => readdirSync(folder)) : [];
}
