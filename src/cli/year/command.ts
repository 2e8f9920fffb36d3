// `samewise year`: the packs of a whole year for a group, made by several workers, and gone on with after a stop.
import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import { ORIENTATIONS, PAPER_NAMES, PRINT_CHOICES } from '../../page/index.ts';
import { LONGEST_YEAR, MOST_SHEETS_A_WEEK } from '../../plan/index.ts';
import { isDay } from '../../records/index.ts';
import { DEFAULT_PAGE, DEFAULT_PRINT } from '../../sheets/index.ts';
import { YEAR_WORDS } from '../../words/index.ts';
import { Refused } from '../failure.ts';
import { type LanguageOption, languageOf } from '../language-option.ts';
import { choiceOf, wholeOf } from '../option-values.ts';
import { checkOutputs, measureOf } from '../outputs.ts';
import { programFile } from '../package-files.ts';
import { openStaging } from '../staging.ts';
import { refuseUnwritableFolder } from '../targets.ts';
import { tell } from '../terminal.ts';
import { runPool } from '../worker-pool.ts';
import { type ChildrenOptions, groupOf } from './children.ts';
import { type Course, courseOf, type Outcome } from './course.ts';
import { FILE_KINDS, type FileKind, type WorkerStart, type YearJob } from './job.ts';
import { takeFolder } from './one-run.ts';
import { folderOf } from './places.ts';
import { sortSums } from './sums.ts';

/** As they are typed. */
export interface YearOptions extends ChildrenOptions, LanguageOption {
  readonly from?: string;
  readonly weeks?: string;
  readonly sheets?: string;
  readonly paper?: string;
  readonly orientation?: string;
  readonly print?: string;
  readonly files?: string;
  readonly single?: boolean;
  readonly measured?: string;
  readonly answers: boolean;
  readonly adultPage: boolean;
  readonly workers?: string;
  readonly anew?: boolean;
  readonly out?: string;
}

const USUAL = { weeks: 40, sheets: 5 } as const;
const MOST_WORKERS = 64;
const EXIT_FAULTS = 2;
/** What a shell gives a program that was interrupted: 128 and the number of the signal. */
const EXIT_INTERRUPTED = 130;

/** The exit code: 0 once the whole year is there, 2 where some of it is not, 130 after an interruption. */
export async function runYear(options: YearOptions): Promise<number> {
  const job = jobOf(options);
  const workers = workersOf(options);
  const { children, pictures, isStockCounted } = groupOf(options);
  makeFolder(job.folder);
  const names = children.map(({ onSheet }) => onSheet.name).join('\n');
  const start: WorkerStart = { job, pictures, names };
  const course = courseOf(job, children);
  const giveFree = takeFolder(job.folder);
  if (isStockCounted) tell(YEAR_WORDS.stockUnused);
  try {
    const isInterrupted = await untilInterrupted(course, () =>
      runPool(workers, () => openWorker(start), course),
    );
    for (const { onSheet } of children) await sortSums(folderOf(job.folder, onSheet));
    return toldOutcome(course.outcome(), children.length, job.folder, isInterrupted);
  } finally {
    giveFree();
  }
}

function toldOutcome(
  { made, sheets, before, kept, failed, left }: Outcome,
  children: number,
  folder: string,
  isInterrupted: boolean,
): number {
  tell(YEAR_WORDS.made(made, sheets, children, before, folder));
  if (kept > 0) tell(`samewise: ${YEAR_WORDS.kept(kept)}`);
  if (failed + left > 0) tell(`samewise: ${YEAR_WORDS.missing(failed + left)}`);
  if (kept + failed + left === 0) return 0;
  return isInterrupted ? EXIT_INTERRUPTED : EXIT_FAULTS;
}

function openWorker(workerData: WorkerStart): Worker {
  return new Worker(programFile('year-worker.js'), { workerData });
}

/** The first Ctrl-C lets the units in work come to their end; a second one ends the program as ever. */
async function untilInterrupted(course: Course, work: () => Promise<void>): Promise<boolean> {
  let isInterrupted = false;
  const interrupt = (): void => {
    isInterrupted = true;
    course.stop();
    tell(YEAR_WORDS.stopping);
  };
  process.once('SIGINT', interrupt);
  process.once('SIGTERM', interrupt);
  await work();
  process.removeListener('SIGINT', interrupt);
  process.removeListener('SIGTERM', interrupt);
  return isInterrupted;
}

function jobOf(options: YearOptions): YearJob {
  const { weeks = String(USUAL.weeks), sheets = String(USUAL.sheets), single = false } = options;
  const { paper, orientation } = options;
  const page = {
    paper: paper === undefined ? DEFAULT_PAGE.paper : choiceOf(paper, '--paper', PAPER_NAMES),
    orientation:
      orientation === undefined
        ? DEFAULT_PAGE.orientation
        : choiceOf(orientation, '--orientation', ORIENTATIONS),
  };
  const { answers, adultPage, language } = options;
  const measured = options.measured === undefined ? {} : { measured: options.measured };
  const outputs = { answers, adultPage, single, ...measured };
  checkOutputs({ ...outputs, ...(language === undefined ? {} : { language }) }, page);
  const measuredMm = measureOf(outputs);
  return {
    folder: needed(options.out, '--out', 'a folder to write into (--out year)'),
    from: dayOf(needed(options.from, '--from', 'a day of the first week (--from 2026-09-07)')),
    weeks: wholeOf(weeks, '--weeks', 1, LONGEST_YEAR),
    sheets: wholeOf(sheets, '--sheets', 1, MOST_SHEETS_A_WEEK),
    page,
    print: choiceOf(options.print ?? DEFAULT_PRINT, '--print', PRINT_CHOICES),
    language: languageOf(options),
    answers,
    adultPage,
    single,
    ...(measuredMm === undefined ? {} : { measuredMm }),
    files: filesOf(options.files ?? 'pdf'),
    anew: options.anew ?? false,
  };
}

function needed(text: string | undefined, at: string, expected: string): string {
  if (text === undefined) throw new Refused({ code: 'missing', at, expected });
  return text;
}

function dayOf(text: string): string {
  if (isDay(text) && text.startsWith('20')) return text;
  const expected = 'a day such as 2026-09-07';
  throw new Refused({ code: 'wrong-type', at: '--from', got: text, expected });
}

/** Kinds with commas between them, in one order, each once. */
function filesOf(text: string): readonly FileKind[] {
  const asked = text.split(',').map((kind) => choiceOf(kind.trim(), '--files', FILE_KINDS));
  return FILE_KINDS.filter((kind) => asked.includes(kind));
}

function workersOf({ workers }: YearOptions): number {
  if (workers === undefined) return Math.min(MOST_WORKERS, availableParallelism());
  return wholeOf(workers, '--workers', 1, MOST_WORKERS);
}

function makeFolder(path: string): void {
  refuseUnwritableFolder(path);
  const staging = openStaging();
  staging.folder(path);
  staging.commit();
}
