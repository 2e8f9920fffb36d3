// The plan of a child's year as a file: which sheets on which days, and of what it was made.
import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { z } from 'zod';
import { LONGEST_YEAR, MOST_SHEETS_A_WEEK } from '../../plan/index.ts';
import { WHYS } from '../../records/index.ts';
import { closedObject, MAKER_VERSION, readJson, wholeNumber } from '../../sheets/index.ts';
import { Refused } from '../failure.ts';
import { packageVersion } from '../package-files.ts';
import { readText } from '../read-text.ts';
import type { PlannedWeek, YearChild, YearJob } from './job.ts';

/** A year of the longest codes. */
const PLAN_CHARACTERS = 4_000_000;

/** What lies in a child's folder: 1 had no sums. */
const FOLDER = 2;

export interface PlanFile {
  readonly stamp: string;
  readonly weeks: readonly PlannedWeek[];
}

const schema = closedObject({
  format: z.literal('samewise.year'),
  version: z.literal(1),
  stamp: z.string().regex(/^[0-9a-f]{64}$/),
  weeks: z
    .array(
      closedObject({
        week: wholeNumber(1, LONGEST_YEAR),
        sheets: z
          .array(closedObject({ day: z.iso.date(), code: z.string(), why: z.enum(WHYS) }))
          .max(MOST_SHEETS_A_WEEK),
      }),
    )
    .max(LONGEST_YEAR),
});

/** A week a line. */
export function planFileText({ stamp, weeks }: PlanFile): string {
  const lines = weeks.map((week) => JSON.stringify(week)).join(',\n');
  return `{"format":"samewise.year","version":1,"stamp":"${stamp}","weeks":[\n${lines}\n]}\n`;
}

/** `undefined` where there is none; `unreadable` where it is another kind of file or damaged. */
export function readPlanFile(path: string): PlanFile | 'unreadable' | undefined {
  if (!existsSync(path)) return undefined;
  const read = schema.safeParse(jsonIn(path));
  return read.success ? { stamp: read.data.stamp, weeks: read.data.weeks } : 'unreadable';
}

/** `undefined` also where it is no text, or more than any plan. */
function jsonIn(path: string): unknown {
  try {
    const json = readJson(readText(path, path, PLAN_CHARACTERS), path, {
      characters: PLAN_CHARACTERS,
    });
    return json.ok ? json.value : undefined;
  } catch (error) {
    if (error instanceof Refused) return undefined;
    throw error;
  }
}

/**
 * What every byte of a child's year hangs on, as SHA-256: the version, the options and the records. Not the number of
 * weeks, since those before stay as they are, nor where the files go and which kinds there are.
 */
export function stampOf(job: YearJob, child: YearChild): string {
  const { folder, weeks, files, anew, ...asked } = job;
  const made = { version: packageVersion(), maker: MAKER_VERSION, folder: FOLDER, asked, child };
  return createHash('sha256').update(JSON.stringify(made)).digest('hex');
}
