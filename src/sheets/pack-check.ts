// Proving a pack file again from its printed facts alone, whoever made it.
import { type Activity, activityOf, type Task } from '../activities/index.ts';
import { accept, type Refusal, type Result, refuse, type Told } from '../base/index.ts';
import { readCode } from './code.ts';
import { telling } from './defect.ts';
import { knowPictures } from './own-pictures.ts';
import { type DifficultyFacts, difficultyFacts, taskText } from './pack-file.ts';
import { difficultySchema, type PackFile, type SheetFile } from './pack-schema.ts';
import { readPackText } from './pack-text.ts';
import { pathText } from './path-text.ts';
import { MOST_REFUSALS, refusalsOf } from './schema-refusals.ts';
import { makeSheet } from './sheet.ts';

/** A task that is not certain. */
export interface TaskFault {
  /** `sheets[0].tasks[2]`. */
  readonly at: string;
  /** The sheet's code as the file gives it. */
  readonly code: string;
  readonly activity: string;
  readonly reason: 'wrong' | 'ambiguous' | 'unfit';
  readonly detail: Told;
}

/** Something worth knowing that makes no task wrong. */
export interface CheckNote {
  readonly at: string;
  readonly code: string;
  readonly note:
    | 'code-unreadable'
    | 'code-makes-other-tasks'
    | 'difficulty-differs'
    /** A person changed the task and printed it knowing that it has not one answer. */
    | 'changed-and-not-certain';
}

export interface Check {
  readonly sheets: number;
  readonly tasks: number;
  /** Empty: every task has exactly the answer that its key gives. */
  readonly faults: readonly TaskFault[];
  readonly notes: readonly CheckNote[];
}

export type OnChecked = (checked: number, all: number) => void;

/** Proves every task of the file's text; refuses text that is no pack file, naming the path of each fault. */
export function checkPackText(text: string, onChecked: OnChecked = () => {}): Result<Check> {
  const read = readPackText(text);
  if (!read.ok) return read;
  const unknown = knowPictures(read.value.pictures, 'pack');
  if (unknown.length > 0) return refuse(...unknown);
  const sheets = readSheets(read.value);
  return sheets.ok ? accept(checkSheets(sheets.value, onChecked)) : sheets;
}

interface ReadSheet {
  readonly file: SheetFile;
  readonly tasks: readonly ReadTask[];
}

interface ReadTask extends Task {
  /** As the file gives it; a file written by hand may leave it out. */
  readonly difficulty?: DifficultyFacts | undefined;
}

/** All tasks are read before any is proven: a file that is not whole proves nothing. */
function readSheets({ sheets }: PackFile): Result<readonly ReadSheet[]> {
  const refusals: Refusal[] = [];
  const read = sheets.map((file, sheet) => ({
    file,
    tasks: file.tasks.flatMap((facts, task) => {
      const found = readTask(activityOf(file.activity), facts, ['sheets', sheet, 'tasks', task]);
      if (found.ok) return [found.value];
      refusals.push(...found.refusals);
      return [];
    }),
  }));
  return refusals.length > 0 ? refuse(...refusals.slice(0, MOST_REFUSALS)) : accept(read);
}

function readTask(
  activity: Activity,
  facts: Readonly<Record<string, unknown>>,
  path: readonly (string | number)[],
): Result<ReadTask> {
  const { answer, difficulty, ...printed } = facts;
  const readPrinted = activity.printed.safeParse(printed);
  const readAnswer = activity.answer.safeParse(answer);
  const readDifficulty = difficultySchema.optional().safeParse(difficulty);
  if (readPrinted.success && readAnswer.success && readDifficulty.success) {
    return accept({
      printed: readPrinted.data,
      answer: readAnswer.data,
      difficulty: readDifficulty.data,
    });
  }
  const at = (name: string) => [...path, name];
  return refuse(
    ...(readPrinted.success ? [] : refusalsOf(readPrinted.error, printed, 'pack', path)),
    ...(readAnswer.success ? [] : refusalsOf(readAnswer.error, answer, 'pack', at('answer'))),
    ...(readDifficulty.success
      ? []
      : refusalsOf(readDifficulty.error, difficulty, 'pack', at('difficulty'))),
  );
}

function checkSheets(sheets: readonly ReadSheet[], onChecked: OnChecked): Check {
  const faults: TaskFault[] = [];
  const notes: CheckNote[] = [];
  for (const [index, sheet] of sheets.entries()) {
    faults.push(...faultsOf(sheet, index));
    notes.push(...notesOf(sheet, index));
    onChecked(index + 1, sheets.length);
  }
  const tasks = sheets.reduce((sum, sheet) => sum + sheet.tasks.length, 0);
  return { sheets: sheets.length, tasks, faults, notes };
}

function faultsOf({ file, tasks }: ReadSheet, sheet: number): readonly TaskFault[] {
  const activity = activityOf(file.activity);
  return tasks.flatMap((task, index) => {
    const at = pathText('', ['sheets', sheet, 'tasks', index]);
    const proof = telling(
      () => at,
      () => activity.prove(task),
    );
    if (proof.proven || (file.edited && !hasOneAnswer(activity, task))) return [];
    const { reason, detail } = proof;
    return [{ at, code: file.code, activity: file.activity, reason, detail }];
  });
}

/** A key that is not the one answer there is makes a task wrong, whoever changed it. */
function hasOneAnswer(activity: Activity, { printed }: Task): boolean {
  const { answers, faults } = activity.solve(printed);
  return answers.length === 1 && faults.length === 0;
}

/** Claims that can be checked; one that does not hold, or is not made, is no fault of the tasks. */
function notesOf(sheet: ReadSheet, index: number): readonly CheckNote[] {
  const { code } = sheet.file;
  const note = codeNote(sheet);
  const at = pathText('', ['sheets', index]);
  return [
    ...(note ? [{ at, code, note }] : []),
    ...doubtNotes(sheet, index),
    ...sheet.tasks.flatMap((task, place) =>
      isAsHardAsSaid(sheet, task)
        ? []
        : [
            {
              at: pathText('', ['sheets', index, 'tasks', place]),
              code,
              note: 'difficulty-differs' as const,
            },
          ],
    ),
  ];
}

function doubtNotes({ file, tasks }: ReadSheet, index: number): readonly CheckNote[] {
  if (!file.edited) return [];
  const activity = activityOf(file.activity);
  return tasks.flatMap((task, place) => {
    if (hasOneAnswer(activity, task)) return [];
    const at = pathText('', ['sheets', index, 'tasks', place]);
    return [{ at, code: file.code, note: 'changed-and-not-certain' as const }];
  });
}

function codeNote({ file, tasks }: ReadSheet): CheckNote['note'] | undefined {
  const spec = readCode(file.code);
  if (!spec.ok) return 'code-unreadable';
  const made = makeSheet(spec.value);
  const isSame =
    made.ok && spec.value.activity === file.activity && textOf(made.value.tasks) === textOf(tasks);
  return isSame ? undefined : 'code-makes-other-tasks';
}

/** Weights are estimated anew now and then, so that an older file may say otherwise. */
function isAsHardAsSaid({ file }: ReadSheet, task: ReadTask): boolean {
  if (task.difficulty === undefined) return true;
  const measured = difficultyFacts(activityOf(file.activity), task);
  return task.difficulty.logits === measured.logits;
}

function textOf(tasks: readonly Task[]): string {
  return tasks.map(taskText).join('\n');
}
