// What a sheet asks of a child, found again from its code: what records are read with.
import { type ActivityId, activityOf, type Decision, type Skill } from '../activities/index.ts';
import { difficultyOf } from '../learner/index.ts';
import {
  makeSheetOfCode,
  materialsToDo,
  minutesFor,
  type Sheet,
  type SheetMaterial,
  valuesOf,
} from '../sheets/index.ts';

export interface TaskFacts {
  /** Difficulty in logits. */
  readonly logits: number;
  /** Probability of being right by chance alone, 0 to 1. */
  readonly chance: number;
  readonly decisions: readonly Decision[];
}

export interface SheetFacts {
  readonly code: string;
  readonly activity: ActivityId;
  readonly skill: Skill;
  readonly step: number;
  readonly content: string;
  /** The hand that it is laid out for, where it is not the right one. */
  readonly hand?: 'left';
  readonly tasks: readonly TaskFacts[];
  /** Mean difficulty of its tasks, in logits. */
  readonly logits: number;
  /** Reckoned minutes for a child of usual pace. */
  readonly minutes: number;
  readonly materials: readonly SheetMaterial[];
}

/** The facts of a sheet by its code; `undefined` where this version cannot read the code. */
export type ReadFacts = (code: string) => SheetFacts | undefined;

/** A reader that makes each sheet once and keeps what it found. */
export function factsReader(): ReadFacts {
  const known = new Map<string, SheetFacts | undefined>();
  return (code) => {
    if (!known.has(code)) known.set(code, readFacts(code));
    return known.get(code);
  };
}

function readFacts(code: string): SheetFacts | undefined {
  const made = makeSheetOfCode(code);
  return made.ok ? factsOf(made.value) : undefined;
}

/** The facts of a sheet that has been made. */
export function factsOf(sheet: Sheet): SheetFacts {
  const { code, spec, tasks } = sheet;
  const activity = activityOf(spec.activity);
  const values = valuesOf(spec);
  const facts = tasks.map((task) => ({
    logits: difficultyOf(activity, task.printed).logits,
    chance: activity.chance(task.printed),
    decisions: activity.decisions(task),
  }));
  return {
    code,
    activity: spec.activity,
    skill: activity.skill,
    step: spec.step,
    content: values.ok ? String(values.value.content) : '',
    ...(spec.hand === undefined ? {} : { hand: spec.hand }),
    tasks: facts,
    logits: facts.reduce((sum, { logits }) => sum + logits, 0) / facts.length,
    minutes: minutesFor(tasks.map(({ printed }) => activity.features(printed))),
    materials: materialsToDo(sheet),
  };
}
