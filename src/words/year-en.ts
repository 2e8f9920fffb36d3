// English words of `samewise year`.
import { plainText } from './plain-text.ts';

function counted(count: number, one: string, more = `${one}s`): string {
  return `${count} ${count === 1 ? one : more}`;
}

/** Whose pack of a week something is told of. */
export interface WeekOfChild {
  readonly number: number;
  readonly name: string;
  /** Absent: of the plan of the whole year. */
  readonly week?: number;
}

export const YEAR_WORDS = {
  about: 'plan and make the packs of a whole year for a group: one for each child and week',
  options: {
    records: 'a backup file: its children, and what they got so far',
    list: 'instead of a backup: a text file with a child a line, such as "Wren, 2022-05", "Moss, step 3" or "Fern"',
    from: 'a day of the first week, such as 2026-09-07',
    weeks: 'number of weeks (default: 40)',
    sheets: 'sheets for each child and week (default: 5)',
    files: 'what each week is written as: pdf, json (a pack file), or pdf,json (default: pdf)',
    out: 'the folder to write into: a folder for each child; run again, it goes on where it stopped',
    workers: 'how many packs are made at a time (default: one for each core)',
    anew: 'make again what stands in the folder and was made of other records, options or by another version, or changed since',
  },
  examples: `
Examples:
  samewise year --list children.txt --from 2026-09-07 --out year
  samewise year --records backup.json --from 2026-09-07 --weeks 50 --sheets 4 --files pdf,json --out year
`,
  making: (done: number, all: number) => `${done} of ${counted(all, 'week')}`,
  failed: ({ number, name, week }: WeekOfChild, reason: string) =>
    `child ${number} (${plainText(name)}), ${week === undefined ? 'plan of the year' : `week ${week}`}: ${reason}`,
  made: (weeks: number, sheets: number, children: number, before: number, folder: string) => {
    const there = before === 0 ? '' : `; ${counted(before, 'week was', 'weeks were')} there before`;
    const group = `for ${counted(children, 'child', 'children')} in ${folder}${there}`;
    if (weeks === 0) return `made nothing new ${group}`;
    return `made ${counted(weeks, 'week')} with ${counted(sheets, 'sheet')}, all proven, ${group}`;
  },
  missing: (weeks: number) =>
    `${counted(weeks, 'week is', 'weeks are')} not there as asked for; run it again with the same words to go on`,
  /** Of what is there and is not what was asked for. */
  kept: (weeks: number) =>
    `${counted(weeks, 'week was', 'weeks were')} left as they stood: see above`,
  /** Why a folder cannot be written to. */
  taken: (pid: number, isHere: boolean, file: string) =>
    `another run of samewise year writes there (process ${pid} on ${isHere ? 'this' : 'another'} machine); wait until it has ended, or if it runs no more, delete ${file}`,
  changed:
    'it is not as it was made, so somebody changed it or put it there, and it was left as it is; delete it to have it made again, or add --anew',
  stockUnused:
    'the count of what is in the house is not regarded: a year takes more stickers and crayons than any house has. For packs of what is there use samewise pack --stock, or Week in the app',
  otherwise:
    'it was made of other records or options, or by another version, and was left as it is; to make it again add --anew',
  stopping: 'stopping once the packs in work are written; press again to stop at once',
  gaveUp: (times: number) => `stopped, since ${times} failed one after another`,
  ended: 'the worker that made it has ended',
} as const;
