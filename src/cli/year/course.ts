// The course of a year's making: what was done of it, and what is told.
import { SHELL_WORDS, YEAR_WORDS } from '../../words/index.ts';
import { showProgress, tell } from '../terminal.ts';
import type { Source } from '../worker-pool.ts';
import type { Answer, Ask, YearChild, YearJob } from './job.ts';
import { queueOf } from './queue.ts';

/** Failures in a row that no further unit will escape, such as a full disk. */
const MOST_IN_A_ROW = 20;
/** Where no terminal shows it, progress is a line for each so many hundredths. */
const LINE_HUNDREDTHS = 5;

export interface Course extends Source<Ask, Answer> {
  /** No further unit is begun. */
  readonly stop: () => void;
  readonly outcome: () => Outcome;
}

/** In weeks, but for the sheets. */
export interface Outcome {
  /** Made now. */
  readonly made: number;
  readonly sheets: number;
  /** There before. */
  readonly before: number;
  /** There before of another making, or changed since, and left as they are. */
  readonly kept: number;
  readonly failed: number;
  /** Not begun, since it was stopped. */
  readonly left: number;
}

export function courseOf(job: YearJob, children: readonly YearChild[]): Course {
  const queue = queueOf(children);
  const tally = tallyOf(job, children.length);
  let [inARow, isStopped] = [0, false];
  const fail = (ask: Ask, reason: string): void => {
    if (ask.kind === 'measure') {
      // Each plan measures it again, and fails there with the name of a child.
      queue.addPages();
      return;
    }
    tally.add('failed', ask, reason);
    inARow += 1;
    if (inARow !== MOST_IN_A_ROW) return;
    tell(`samewise: ${YEAR_WORDS.gaveUp(inARow)}`);
    isStopped = true;
  };
  return {
    next: (worker) => (isStopped ? undefined : queue.next(worker)),
    done: (ask, answer) => {
      if (answer.kind === 'failed') {
        fail(ask, answer.reason);
        return;
      }
      inARow = 0;
      if (answer.kind === 'measured') queue.addPages(answer.pages);
      if (ask.kind === 'measure') return;
      if (answer.kind === 'to-plan' && ask.kind === 'look') queue.addToPlan(ask.child);
      if (answer.kind === 'found') queue.addWeeks(onSheetOf(ask), answer.toMake);
      tally.note(ask, answer);
    },
    lost: (ask, reason) => {
      fail(ask, reason === undefined ? YEAR_WORDS.ended : SHELL_WORDS.defect(reason));
    },
    stop: () => {
      isStopped = true;
    },
    outcome: tally.outcome,
  };
}

/** A unit that is about one child. */
type OfChild = Exclude<Ask, { readonly kind: 'measure' }>;

function onSheetOf(ask: OfChild): YearChild['onSheet'] {
  return ask.kind === 'week' ? ask.onSheet : ask.child.onSheet;
}

/** Counts weeks, tells what is not as asked for, and shows how far it is. */
function tallyOf(job: YearJob, children: number) {
  const all = children * job.weeks;
  const count = { made: 0, sheets: 0, before: 0, kept: 0, failed: 0 };
  const progress = progressTo(all);
  const settled = () => count.made + count.before + count.kept + count.failed;
  /** Of a unit that is no week's, or of one of its weeks. */
  const add = (as: 'kept' | 'failed', ask: OfChild, reason: string, of?: number): void => {
    const { number, name } = onSheetOf(ask);
    const week = ask.kind === 'week' ? ask.planned.week : of;
    const whose = { number, name, ...(week === undefined ? {} : { week }) };
    tell(`samewise: ${YEAR_WORDS.failed(whose, reason)}`);
    count[as] += week === undefined ? job.weeks : 1;
    progress(settled(), all);
  };
  const note = (ask: OfChild, answer: Answer): void => {
    if (answer.kind === 'otherwise') add('kept', ask, YEAR_WORDS.otherwise);
    if (answer.kind === 'found') {
      for (const week of answer.changed) add('kept', ask, YEAR_WORDS.changed, week);
      count.before += job.weeks - answer.toMake.length - answer.changed.length;
    }
    if (answer.kind === 'made' && ask.kind === 'week') {
      count.made += 1;
      count.sheets += ask.planned.sheets.length;
    }
    progress(settled(), all);
  };
  return { add, note, outcome: (): Outcome => ({ ...count, left: all - settled() }) };
}

/** A line that is written over on a terminal, a line for each twentieth elsewhere. */
function progressTo(all: number): (done: number, all: number) => void {
  if (process.stderr.isTTY === true) return showProgress(YEAR_WORDS.making);
  let told = 0;
  return (done) => {
    const hundredths = Math.floor((100 * done) / all);
    if (hundredths < told + LINE_HUNDREDTHS || done === all) return;
    told = hundredths - (hundredths % LINE_HUNDREDTHS);
    tell(YEAR_WORDS.making(done, all));
  };
}
