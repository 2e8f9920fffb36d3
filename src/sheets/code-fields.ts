// What a sheet code carries, field by field; written and read from the same list of radices.
import type { Activity, ActivityId, Parameter, Value, Values } from '../activities/index.ts';
import { accept, MAX_SEED, type Result, refuse } from '../base/index.ts';
import {
  idText,
  MOST_OWN_ON_SHEET,
  OWN_IDS,
  ownIdNumber,
  type PictureChoice,
  picturesField,
} from '../figures/index.ts';
import { ORIENTATIONS, PAPER_NAMES, PRINT_CHOICES } from '../page/index.ts';
import { COLOUR_NAMES } from '../palette/index.ts';
import { editFields, takeEdits } from './code-edits.ts';
import type { Packed, Unpacking } from './code-packing.ts';
import { MOST_TASKS, printChoicesOf, type SheetSpec } from './sheet-spec.ts';

/** Room for what may be added without a new version: more activities, steps, tasks and papers. */
const RADIX = { activity: 64, step: 32, tasks: 16, paper: 4, orientation: 2, print: 4, changed: 2 };
const SEED_RADIX = MAX_SEED + 1;
/** From version 2 on: whether there are extras, and where there are, colours as a mask and how the page is laid out. */
const EXTRAS_RADIX = { has: 2, colours: 2 ** COLOUR_NAMES.length, layout: 64 };
/** Parts of the layout's number. One more is free for what is to come. */
const LAYOUT_BITS = { hand: 1, size: 2, ink: 4, margin: 8, pictures: 32 };
const LAYOUT_KNOWN = Object.values(LAYOUT_BITS).reduce((sum, bit) => sum + bit, 0);
/** Where the layout says that there are own pictures: whether they alone, how many, and the number of each. */
const PICTURES_RADIX = { alone: 2, count: 16, id: OWN_IDS };

/**
 * Versions of what a code carries. The first says nothing of extras, and is what a sheet without them has; the third
 * also says what was changed by hand.
 */
export type CodeVersion = 1 | 2 | 3;

export function versionFor(spec: SheetSpec): CodeVersion {
  if (spec.edits !== undefined) return 3;
  return hasExtras(spec) ? 2 : 1;
}

function hasExtras(spec: SheetSpec): boolean {
  return spec.colours !== undefined || layoutNumber(spec) > 0;
}

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
    ...extraFields(spec),
    { value: changed ? 1 : 0, radix: RADIX.changed },
    ...(changed ? valueFields(activity, changed) : []),
    { value: spec.seed, radix: SEED_RADIX },
    ...(spec.edits === undefined ? [] : editFields(spec.edits, spec.pictures)),
  ];
}

function layoutNumber({ hand, size, ink, page, pictures }: SheetSpec): number {
  return (
    (hand === undefined ? 0 : LAYOUT_BITS.hand) +
    (size === undefined ? 0 : LAYOUT_BITS.size) +
    (ink === undefined ? 0 : LAYOUT_BITS.ink) +
    (page.margin === undefined ? 0 : LAYOUT_BITS.margin) +
    (pictures === undefined ? 0 : LAYOUT_BITS.pictures)
  );
}

function extraFields(spec: SheetSpec): readonly Packed[] {
  if (versionFor(spec) === 1) return [];
  if (!hasExtras(spec)) return [{ value: 0, radix: EXTRAS_RADIX.has }];
  const { colours = [] } = spec;
  const mask = colours.reduce((sum, name) => sum + 2 ** COLOUR_NAMES.indexOf(name), 0);
  return [
    { value: 1, radix: EXTRAS_RADIX.has },
    { value: mask, radix: EXTRAS_RADIX.colours },
    { value: layoutNumber(spec), radix: EXTRAS_RADIX.layout },
    ...pictureFields(spec.pictures),
  ];
}

/** The numbers of own pictures; none where there are none. */
export function pictureFields(pictures: PictureChoice | undefined): readonly Packed[] {
  if (pictures === undefined) return [];
  const { ids, alone } = pictures;
  return [
    { value: alone ? 1 : 0, radix: PICTURES_RADIX.alone },
    { value: ids.length, radix: PICTURES_RADIX.count },
    ...ids.map((id) => ({ value: ownIdNumber(id), radix: PICTURES_RADIX.id })),
  ];
}

/** Refuses none at all, more than a sheet has, and numbers that are not in order. */
function takePictures(fields: Unpacking): Result<Pick<SheetSpec, 'pictures'>> {
  const alone = fields.take(PICTURES_RADIX.alone) === 1;
  const count = fields.take(PICTURES_RADIX.count);
  const numbers = Array.from({ length: count }, () => fields.take(PICTURES_RADIX.id));
  const ids = numbers.map(idText);
  const read = picturesField({ ids, ...(alone ? { alone } : {}) });
  if (count <= MOST_OWN_ON_SHEET && read.pictures?.ids.join() === ids.join()) return accept(read);
  return refuse({
    code: 'unreadable',
    at: `${AT} › own pictures`,
    got: count,
    expected: `1 to ${MOST_OWN_ON_SHEET} pictures in order`,
  });
}

/** Takes the extras out; refuses any that only a later maker writes. */
function takeExtras(fields: Unpacking): Result<Extras> {
  const has = fields.take(EXTRAS_RADIX.has) === 1;
  const mask = has ? fields.take(EXTRAS_RADIX.colours) : 0;
  const layout = has ? fields.take(EXTRAS_RADIX.layout) : 0;
  if ((layout | LAYOUT_KNOWN) !== LAYOUT_KNOWN) {
    const because = 'the code was made by a Samewise that knows more of them';
    const got = `number ${layout}`;
    const choices = [`sums of ${Object.values(LAYOUT_BITS).join(', ')}`];
    return refuse({ code: 'not-a-choice', at: `${AT} › layout`, got, choices, because });
  }
  const colours = COLOUR_NAMES.filter((_, place) => mask & (2 ** place));
  const pictures = layout & LAYOUT_BITS.pictures ? takePictures(fields) : accept({});
  if (!pictures.ok) return pictures;
  return accept({
    ...pictures.value,
    ...(colours.length > 0 ? { colours } : {}),
    ...(layout & LAYOUT_BITS.hand ? { hand: 'left' } : {}),
    ...(layout & LAYOUT_BITS.size ? { size: 'large' } : {}),
    ...(layout & LAYOUT_BITS.ink ? { ink: 'saving' } : {}),
    ...(layout & LAYOUT_BITS.margin ? { margin: 'pocket' } : {}),
  });
}

interface Extras extends Pick<SheetSpec, 'colours' | 'pictures' | 'hand' | 'size' | 'ink'> {
  readonly margin?: 'pocket';
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

/** Takes the fields of a version out again; refuses an activity, a number of tasks a page or extras that this maker does not know. */
export function readFields(
  fields: Unpacking,
  activities: readonly (readonly [ActivityId, Activity])[],
  version: CodeVersion,
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
  const extras: Result<Extras> = version === 1 ? accept({}) : takeExtras(fields);
  if (!extras.ok) return extras;
  const values = fields.take(RADIX.changed) === 1 ? takeValues(fields, activity) : {};
  const seed = fields.take(SEED_RADIX);
  const { margin, ...others } = extras.value;
  const choices = printChoicesOf({
    page: {
      paper: paper.value,
      orientation: orientation.value,
      ...(margin === undefined ? {} : { margin }),
    },
    print: print.value,
    ...others,
  });
  const edits: Result<Pick<SheetSpec, 'edits'>> =
    version < 3 ? accept({}) : takeEdits(fields, tasks, extras.value.pictures);
  if (!edits.ok) return edits;
  const spec = { activity: id, step, values, seed, tasks, ...choices, ...edits.value };
  return accept({ activity, spec });
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
