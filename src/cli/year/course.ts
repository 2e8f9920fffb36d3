// The course of a year's making: which unit is next, what was done, what is told of it.
import { SHELL_WORDS, YEAR_WORDS } from '../../words/index.ts';
import { showProgress, tell } from '../terminal.ts';
import type { Source } from '../worker-pool.ts';
import type { Answer, Ask, PlannedWeek, YearChild, YearJob } from './job.ts';

/** Failures in a row that no further unit will escape, such as a full disk. */
const MOST_IN_A_ROW = 20;
/** Where no terminal shows it, progress is a line for each so many hundredths. */
const LINE_HUNDREDTHS = 5;

export interface Course extends Source<Ask, Answer> {
  /** No further unit is begun. */
  readonly stop: () => void;
  readonly outcome: () => Outcome;
}

export interface Outcome {
  /** Weeks that were made now. */
  readonly made: number;
  readonly sheets: number;
  /** Weeks that were there before. */
  readonly before: number;
  /** Weeks that failed or stand there of another making. */
  readonly faulty: number;
  /** Weeks that were not begun, since it was stopped. */
  readonly left: number;
}

/** Weeks come before further plans, so that few plans wait. */
export function courseOf(job: YearJob, children: readonly YearChild[]): Course {
  const all = children.length * job.weeks;
  const waiting: Ask[] = [];
  const count = { made: 0, sheets: 0, before: 0, faulty: 0 };
  let [place, inARow, isStopped] = [0, 0, false];
  const progress = progressTo(all);
  const settle = (): void => progress(count.made + count.before + count.faulty, all);
  const tellFault = (ask: Ask, reason: string): void => {
    const { number, name } = childOf(ask);
    const week = ask.kind === 'week' ? { week: ask.planned.week } : {};
    tell(`samewise: ${YEAR_WORDS.failed({ number, name, ...week }, reason)}`);
    count.faulty += ask.kind === 'week' ? 1 : job.weeks;
  };
  const fail = (ask: Ask, reason: string): void => {
    tellFault(ask, reason);
    inARow += 1;
    if (inARow !== MOST_IN_A_ROW) return;
    tell(`samewise: ${YEAR_WORDS.gaveUp(inARow)}`);
    isStopped = true;
  };
  const queue = (ask: Ask, toMake: readonly PlannedWeek[]): void => {
    count.before += job.weeks - toMake.length;
    const onSheet = childOf(ask);
    waiting.push(...toMake.map((each) => ({ kind: 'week' as const, onSheet, planned: each })));
  };
  const note = (ask: Ask, answer: Answer): void => {
    if (answer.kind === 'failed') fail(ask, answer.reason);
    else inARow = 0;
    if (answer.kind === 'planned' && answer.otherwise) tellFault(ask, YEAR_WORDS.otherwise);
    else if (answer.kind === 'planned') queue(ask, answer.toMake);
    if (answer.kind !== 'made' || ask.kind !== 'week') return;
    count.made += 1;
    count.sheets += ask.planned.sheets.length;
  };
  return {
    next: () => {
      if (isStopped) return undefined;
      const week = waiting.shift();
      if (week) return week;
      const child = children[place];
      place += 1;
      return child && { kind: 'plan', child };
    },
    done: (ask, answer) => {
      note(ask, answer);
      settle();
    },
    lost: (ask, reason) => {
      fail(ask, reason === undefined ? YEAR_WORDS.ended : SHELL_WORDS.defect(reason));
      settle();
    },
    stop: () => {
      isStopped = true;
    },
    outcome: () => ({ ...count, left: all - count.made - count.before - count.faulty }),
  };
}

function childOf(ask: Ask) {
  return ask.kind === 'plan' ? ask.child.onSheet : ask.onSheet;
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
