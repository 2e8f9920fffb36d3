// Version 1 of what a sheet code carries, field by field; written and read from the same list of radices.
import type { Activity, ActivityId, Parameter, Value, Values } from '../activities/index.ts';
import { accept, MAX_SEED, type Result, refuse } from '../base/index.ts';
import { ORIENTATIONS, PAPER_NAMES, PRINT_CHOICES } from '../page/index.ts';
import type { Packed, Unpacking } from './code-packing.ts';
import { MOST_TASKS, type SheetSpec } from './sheet-spec.ts';

/** Room for what may be added without a new version: more activities, steps, tasks and papers. */
const RADIX = { activity: 64, step: 32, tasks: 16, paper: 4, orientation: 2, print: 4, changed: 2 };
const SEED_RADIX = MAX_SEED + 1;

/** How many values a parameter can take. */
function radixOf(parameter: Parameter): number {
  switch (parameter.kind) {
    case 'whole':
      return parameter.max - parameter.min + 1;
    case 'choice':
      return parameter.values.length;
    case 'yes-no':
      return 2;
  }
}

/** The fields of a sheet in the order in which they are packed; `changed` holds all values if any differs. */
export function fieldsOf(activity: Activity, spec: SheetSpec, changed?: Values): readonly Packed[] {
  return [
    { value: activity.codeNumber, radix: RADIX.activity },
    { value: spec.step - 1, radix: RADIX.step },
    { value: spec.tasks - 1, radix: RADIX.tasks },
    { value: PAPER_NAMES.indexOf(spec.page.paper), radix: RADIX.paper },
    { value: ORIENTATIONS.indexOf(spec.page.orientation), radix: RADIX.orientation },
    { value: PRINT_CHOICES.indexOf(spec.print), radix: RADIX.print },
    { value: changed ? 1 : 0, radix: RADIX.changed },
    ...(changed ? valueFields(activity, changed) : []),
    { value: spec.seed, radix: SEED_RADIX },
  ];
}

function valueFields(activity: Activity, values: Values): readonly Packed[] {
  return Object.entries(activity.parameters).map(([name, parameter]) => ({
    value: numberOfValue(parameter, values[name]),
    radix: radixOf(parameter),
  }));
}

function numberOfValue(parameter: Parameter, value: Value | undefined): number {
  switch (parameter.kind) {
    case 'whole':
      return Number(value) - parameter.min;
    case 'choice':
      return parameter.values.indexOf(String(value));
    case 'yes-no':
      return value === true ? 1 : 0;
  }
}

function valueOfNumber(parameter: Parameter, number: number): Value {
  switch (parameter.kind) {
    case 'whole':
      return parameter.min + number;
    case 'choice':
      return parameter.values[number] ?? '';
    case 'yes-no':
      return number === 1;
  }
}

/** What the fields say, before the activity has judged its values. */
export interface ReadFields {
  readonly activity: Activity;
  readonly spec: SheetSpec;
}

/** Takes the fields out again; refuses an activity, a number of tasks or a page that this version does not know. */
export function readFields(
  fields: Unpacking,
  activities: readonly (readonly [ActivityId, Activity])[],
): Result<ReadFields> {
  const number = fields.take(RADIX.activity);
  const entry = activities.find(([, activity]) => activity.codeNumber === number);
  if (!entry) return refuseActivity(number, activities);
  const [id, activity] = entry;
  const step = fields.take(RADIX.step) + 1;
  const tasks = fields.take(RADIX.tasks) + 1;
  if (tasks > MOST_TASKS) {
    return refuse({
      code: 'out-of-range',
      at: `${AT} › tasks`,
      got: tasks,
      min: 1,
      max: MOST_TASKS,
    });
  }
  const paper = chosen('paper', PAPER_NAMES, fields.take(RADIX.paper));
  if (!paper.ok) return paper;
  const orientation = chosen('orientation', ORIENTATIONS, fields.take(RADIX.orientation));
  if (!orientation.ok) return orientation;
  const print = chosen('print', PRINT_CHOICES, fields.take(RADIX.print));
  if (!print.ok) return print;
  const values = fields.take(RADIX.changed) === 1 ? takeValues(fields, activity) : {};
  const seed = fields.take(SEED_RADIX);
  const page = { paper: paper.value, orientation: orientation.value };
  return accept({
    activity,
    spec: { activity: id, step, values, seed, tasks, page, print: print.value },
  });
}

const AT = 'sheet code';

function takeValues(fields: Unpacking, activity: Activity): Values {
  const values = Object.entries(activity.parameters).map(
    ([name, parameter]) =>
      [name, valueOfNumber(parameter, fields.take(radixOf(parameter)))] as const,
  );
  return Object.fromEntries(values);
}

function chosen<T extends string>(name: string, choices: readonly T[], index: number): Result<T> {
  const choice = choices[index];
  return choice === undefined
    ? refuse({ code: 'not-a-choice', at: `${AT} › ${name}`, got: `number ${index + 1}`, choices })
    : accept(choice);
}

function refuseActivity(
  number: number,
  activities: readonly (readonly [ActivityId, Activity])[],
): Result<never> {
  return refuse({
    code: 'not-a-choice',
    at: `${AT} › activity`,
    got: `number ${number}`,
    choices: activities.map(([id, activity]) => `${activity.codeNumber} (${id})`),
    because: 'the code was made by a Samewise that knows more activities',
  });
}
