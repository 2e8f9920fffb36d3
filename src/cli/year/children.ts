// The children of a year: those of a backup file, or those of a list.
import { accept, type Result, refuse, told } from '../../base/index.ts';
import type { OwnPicture } from '../../figures/index.ts';
import {
  BACKUP_CHARACTERS,
  type Child,
  isMonth,
  keptPictures,
  readBackup,
  viewOf,
} from '../../records/index.ts';
import {
  LONGEST_NAME,
  longNameRefusals,
  MOST_CHILDREN,
  numberedChildren,
} from '../../sheets/index.ts';
import { accepted, Refused } from '../failure.ts';
import { readText } from '../read-text.ts';
import type { YearChild } from './job.ts';

export interface ChildrenOptions {
  readonly records?: string;
  readonly list?: string;
}

export interface Group {
  readonly children: readonly YearChild[];
  readonly pictures: readonly OwnPicture[];
  /** Whether a backup has a count of what is in the house, which a year does not regard. */
  readonly isStockCounted: boolean;
}

/** A line of a list: the name and some more. */
const LIST_CHARACTERS = MOST_CHILDREN * (LONGEST_NAME + 100);
const LIST = 'list of children';

/** Refuses, besides files that cannot be read, both or neither of them, no children and too many. */
export function groupOf({ records, list }: ChildrenOptions): Group {
  if ((records === undefined) === (list === undefined)) {
    const expected = 'either a backup file (--records backup.json) or a list (--list children.txt)';
    throw new Refused({ code: 'missing', at: 'year', expected });
  }
  const group =
    records === undefined ? ofList(list ?? '') : ofBackup(accepted(readBackup(backupAt(records))));
  const got = group.children.length;
  if (got === 0) {
    throw new Refused({ code: 'missing', at: records ?? list ?? '', expected: 'children' });
  }
  if (got > MOST_CHILDREN) {
    const unit = told('reasons', 'amount.children');
    const [at, max] = [records ?? list ?? '', MOST_CHILDREN];
    throw new Refused({ code: 'too-big', at, got, max, unit });
  }
  return group;
}

function backupAt(path: string): string {
  return readText(path, 'backup', BACKUP_CHARACTERS);
}

function ofBackup(entries: Parameters<typeof viewOf>[0]): Group {
  const { children, results, stock } = viewOf(entries);
  const group = children.map((child) => ({ child, results: results.get(child.id) ?? [] }));
  return {
    children: numbered(group),
    pictures: keptPictures(entries).map(({ picture }) => picture),
    isStockCounted: stock !== undefined,
  };
}

function ofList(path: string): Group {
  const text = readText(path, LIST, LIST_CHARACTERS);
  return { children: accepted(readList(text)), pictures: [], isStockCounted: false };
}

/**
 * A child a line: its name and, behind a comma, a semicolon or a tab, its month of birth or `step` and a number. Lines
 * that are empty or begin with `#` say nothing. Refuses, by its line, what is neither, and both.
 */
export function readList(text: string): Result<readonly YearChild[]> {
  const lines = text.replace(/^\ufeff/, '').split(/\r\n|\r|\n/);
  const read = lines.flatMap((line, index) =>
    line.trim() === '' || line.startsWith('#') ? [] : [lineOf(line, `${LIST} › line ${index + 1}`)],
  );
  const refusals = read.flatMap((each) => (each.ok ? [] : each.refusals));
  if (refusals.length > 0) return refuse(...refusals);
  const times = new Map<string, number>();
  const children = read
    .flatMap((each) => (each.ok ? [each.value] : []))
    .map((line) => {
      const { name, birthMonth, step } = line;
      const time = (times.get(name) ?? 0) + 1;
      times.set(name, time);
      // Of the name alone, so that a child's sheets stay when others come or go.
      const id = `${time} ${name}`;
      const child = { id, nickname: name, ...(birthMonth === undefined ? {} : { birthMonth }) };
      return { child, results: [], ...(step === undefined ? {} : { step }) };
    });
  return accept(numbered(children));
}

interface Line {
  readonly name: string;
  readonly birthMonth?: string;
  readonly step?: number;
}

const STEP = /^step\s*(\d{1,2})$/i;

function lineOf(line: string, at: string): Result<Line> {
  // A spreadsheet writes empty cells, too.
  const [name, fact] = cutInTwo(line.replace(/[,;\s]+$/u, ''));
  if (name === '') return refuse({ code: 'missing', at, expected: 'a name' });
  const tooLong = longNameRefusals(name, at);
  if (tooLong.length > 0) return refuse(...tooLong);
  const read = factOf(fact);
  const [, before] = cutInTwo(name);
  const isTwice = before !== '' && factOf(before) !== undefined;
  if (read !== undefined && !isTwice) return accept({ name, ...read });
  const expected =
    'a name alone, or behind it a month of birth such as 2022-05 or a step such as step 3, not both';
  return refuse({ code: 'unreadable', at, got: isTwice ? `${before}, ${fact}` : fact, expected });
}

/** What stands before the last comma, semicolon or tab, and what behind it. */
function cutInTwo(line: string): readonly [before: string, behind: string] {
  const [, before = line, behind = ''] = /^(.*)[,;\t](.*)$/u.exec(line) ?? [];
  return [before.trim(), behind.trim()];
}

/** `undefined` where it is neither a month nor a step. */
function factOf(fact: string): Omit<Line, 'name'> | undefined {
  if (fact === '') return {};
  if (isMonth(fact)) return { birthMonth: fact };
  const step = Number(STEP.exec(fact)?.[1] ?? 0);
  return step >= 1 ? { step } : undefined;
}

/** In the order of the group; a name that several have stands on sheets with the number. */
function numbered(
  group: readonly (Omit<YearChild, 'onSheet'> & { readonly child: Child })[],
): readonly YearChild[] {
  const onSheets = numberedChildren(group.map(({ child }) => child.nickname));
  return group.flatMap((each, place) => {
    const onSheet = onSheets[place];
    return onSheet ? [{ ...each, onSheet }] : [];
  });
}
