// Making a sheet: its tasks from the seed, room found for them, every one proven.
import { type Activity, activityOf, faultIn, type Task, type Values } from '../activities/index.ts';
import { accept, MAX_SEED, type Refusal, type Result, refuse, told } from '../base/index.ts';
import { type Doubt, editedTasks, editsField } from '../editing/index.ts';
import { CONTENT_IDS, type ContentId, isOfLetters, lettersOfName } from '../figures/index.ts';
import { readCode, writeCode } from './code.ts';
import { changesRefusal } from './code-edits.ts';
import { telling } from './defect.ts';
import { mostOnPage, roomRefusal, stickerRefusal } from './sheet-room.ts';
import {
  isAboutPictures,
  MOST_TASKS,
  type PrintChoices,
  printChoicesOf,
  type SheetSpec,
  styleOf,
} from './sheet-spec.ts';
import { changesOf, valuesOf } from './sheet-values.ts';
import { differentTasks } from './tasks.ts';

/** One page for one child, each of its tasks proven. */
export interface Sheet {
  /** With those values alone that differ from the step's. */
  readonly spec: SheetSpec;
  readonly code: string;
  readonly tasks: readonly Task[];
  /** Tasks that were changed and are not certain; absent: all are. */
  readonly doubts?: readonly Doubt[];
  /** Whose sheet it is; absent: for anyone. */
  readonly child?: SheetChild;
}

/** A child of the group that a pack is for. */
export interface SheetChild {
  /** Place in the group, 1 upward: tells two of one name apart. */
  readonly number: number;
  readonly name: string;
  /** Whether another child of the group has the same name; absent: none. */
  readonly isShared?: boolean;
}

/** A spec in which the number of tasks may be left to the step and the page, and `letters` may be a name or any text. */
export type SheetRequest = Omit<SheetSpec, 'tasks'> & { readonly tasks?: number };

/**
 * The sheet of a spec: always the same one. Without `tasks` it has the step's own number, or as
 * many of them as the page has room for. Refuses values that the activity refuses, more tasks than
 * there is room for, and more different tasks than the values allow. A task that is not proven is
 * a defect, unless a person changed it so: then the sheet has a doubt of it.
 */
export function makeSheet(request: SheetRequest): Result<Sheet> {
  const activity = activityOf(request.activity);
  const numbers = numberRefusals(request);
  if (numbers.length > 0) return refuse(...numbers);
  const values = valuesOf(request);
  if (!values.ok) return values;
  const letters = lettersField(request, values.value);
  const choices = printChoicesOf({ ...withoutLetters(request), ...letters });
  const wanted = request.tasks ?? activity.ladder[request.step - 1]?.tasks ?? 1;
  const style = styleOf(choices);
  const drawn = differentTasks(activity, values.value, request.seed, style, wanted);
  const own =
    request.tasks === undefined ? drawn.slice(0, mostOnPage(activity, drawn, request) || 1) : drawn;
  const ground = { activity, values: values.value, style };
  const edits = editsField(request.edits);
  const edited = editedTasks(ground, own, edits.edits ?? []);
  if (!edited.ok) return edited;
  const { tasks, doubts } = edited.value;
  const refusal =
    stickerRefusal(activity, tasks, request) ??
    roomRefusal(activity, tasks, request) ??
    differenceRefusal(activity, tasks.length, request.tasks ?? tasks.length) ??
    changesRefusal(activity, edits.edits, request.pictures);
  if (refusal) return refuse(refusal);
  const spec = {
    activity: request.activity,
    step: request.step,
    seed: request.seed,
    tasks: tasks.length,
    values: changesOf(request, values.value),
    ...printChoicesOf(withUsedPictures(choices, request.activity, values.value)),
    ...edits,
  };
  const code = writeCode(spec);
  const sure = tasks.filter((_, index) => !doubts.some(({ task }) => task === index));
  proveTasks(activity, sure, code, spec.seed);
  return accept({ spec, code, tasks, ...(doubts.length > 0 ? { doubts } : {}) });
}

/** A sheet that is not about pictures names none, so that it can be made again where they are not. */
function withUsedPictures(
  choices: PrintChoices,
  activity: SheetSpec['activity'],
  values: Values,
): PrintChoices {
  const { pictures: _pictures, ...others } = choices;
  return isAboutPictures(activity, values) ? choices : others;
}

/** Of the letters asked for, those that the content draws; none where it is not of letters or draws none of them. */
function lettersField({ letters }: SheetRequest, { content }: Values): Pick<SheetSpec, 'letters'> {
  if (letters === undefined || !isOfLetters(String(content), CONTENT_IDS)) return {};
  const own = lettersOfName(content as ContentId, letters).letters;
  return own === '' ? {} : { letters: own };
}

function withoutLetters({ letters: _letters, ...others }: SheetRequest): SheetRequest {
  return others;
}

/** The sheet of a printed code, proven as ever. Refuses what `readCode` and `makeSheet` refuse. */
export function makeSheetOfCode(code: string): Result<Sheet> {
  const spec = readCode(code);
  return spec.ok ? makeSheet(spec.value) : spec;
}

/** Throws, naming activity, code and seed, where a task has not exactly the answer of its key. */
export function proveTasks(
  activity: Activity,
  tasks: readonly Task[],
  code: string,
  seed: number,
): void {
  for (const [index, task] of tasks.entries()) {
    telling(
      () => `${activity.id}, sheet ${code}, seed ${seed}, task ${index + 1}`,
      () => {
        const proof = activity.prove(task);
        if (!proof.proven) throw new Error(`${proof.reason}: ${faultIn('en', proof.detail)}`);
      },
    );
  }
}

function numberRefusals({ activity, seed, tasks, colours }: SheetRequest): readonly Refusal[] {
  if (colours?.length === 0) {
    return [
      {
        code: 'missing',
        at: `${activity} › colours`,
        expected: told('reasons', 'expected.colour'),
      },
    ];
  }
  const wholes = [
    { name: 'seed', got: seed, min: 0, max: MAX_SEED },
    ...(tasks === undefined ? [] : [{ name: 'tasks', got: tasks, min: 1, max: MOST_TASKS }]),
  ];
  return wholes
    .filter(({ got, min, max }) => !(Number.isInteger(got) && got >= min && got <= max))
    .map(({ name, ...range }) => ({ code: 'out-of-range', at: `${activity} › ${name}`, ...range }));
}

function differenceRefusal(activity: Activity, found: number, wanted: number): Refusal | undefined {
  if (found >= wanted) return undefined;
  return {
    code: 'does-not-fit',
    at: `${activity.id} › tasks`,
    got: wanted,
    max: found,
    unit: told('reasons', 'amount.tasks.different'),
    advice: told('reasons', 'do.fewer', { count: found }),
  };
}
