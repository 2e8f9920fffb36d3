// What a sheet code carries, field by field; written and read from the same list of radices.
import type { Activity, ActivityId, Parameter, Value, Values } from '../activities/index.ts';
import { accept, MAX_SEED, type Result, refuse, told } from '../base/index.ts';
import {
  idText,
  LATER_CONTENT_IDS,
  MOST_OWN_ON_SHEET,
  OWN_IDS,
  ownIdNumber,
  type PictureChoice,
  picturesField,
} from '../figures/index.ts';
import { ORIENTATIONS, PAPER_NAMES, PRINT_CHOICES } from '../page/index.ts';
import { COLOUR_NAMES } from '../palette/index.ts';
import { editFields, takeEdits } from './code-edits.ts';
import { letterFields, takeLetters } from './code-letters.ts';
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
 * also says what was changed; the fourth knows the later contents and the letters of a name, and says what the third says.
 * Own pictures are among the extras, so that versions 2 and 3 name them; a sheet of letters, whose version is 4, has none.
 */
export type CodeVersion = 1 | 2 | 3 | 4;

export function versionFor(spec: SheetSpec): CodeVersion {
  if (spec.letters !== undefined || isLater(spec.values.content)) return 4;
  if (spec.edits !== undefined) return 3;
  return hasExtras(spec) ? 2 : 1;
}

function hasExtras(spec: SheetSpec): boolean {
  return spec.colours !== undefined || layoutNumber(spec) > 0;
}

function isLater(content: Value | undefined): boolean {
  return LATER_CONTENT_IDS.some((later) => later === content);
}

/** Values of a choice as a version counts them: the fourth those that came later behind all others, with room for more. */
function countedValues(values: readonly string[], version: CodeVersion): readonly string[] {
  const first = values.filter((value) => !isLater(value));
  return version < 4 ? first : [...first, ...values.filter(isLater)];
}

const CHOICES_RADIX = 64;

/** How many values a parameter can take. */
function radixOf(parameter: Parameter, version: CodeVersion): number {
  switch (parameter.kind) {
    case 'whole':
      return parameter.max - parameter.min + 1;
    case 'choice':
      return version >= 4 && parameter.values.some(isLater)
        ? CHOICES_RADIX
        : countedValues(parameter.values, version).length;
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
    ...(changed ? valueFields(activity, changed, versionFor(spec)) : []),
    { value: spec.seed, radix: SEED_RADIX },
    ...(versionFor(spec) === 4 ? fourthFields(spec) : []),
    ...(spec.edits === undefined ? [] : editFields(spec.edits, spec.pictures)),
  ];
}

/** Whether there are letters of a name, and which; whether there are changes, which follow. */
function fourthFields(spec: SheetSpec): readonly Packed[] {
  const { letters, edits } = spec;
  return [
    { value: letters === undefined ? 0 : 1, radix: RADIX.changed },
    ...(letters === undefined ? [] : letterFields(spec)),
    { value: edits === undefined ? 0 : 1, radix: RADIX.changed },
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
    expected: told('reasons', 'expected.pictures.order', { most: MOST_OWN_ON_SHEET }),
  });
}

/** Takes the extras out; refuses any that only a later maker writes. */
function takeExtras(fields: Unpacking): Result<Extras> {
  const has = fields.take(EXTRAS_RADIX.has) === 1;
  const mask = has ? fields.take(EXTRAS_RADIX.colours) : 0;
  const layout = has ? fields.take(EXTRAS_RADIX.layout) : 0;
  if ((layout | LAYOUT_KNOWN) !== LAYOUT_KNOWN) {
    const because = told('reasons', 'code.newer');
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

function valueFields(activity: Activity, values: Values, version: CodeVersion): readonly Packed[] {
  return Object.entries(activity.parameters).map(([name, parameter]) => ({
    value: numberOfValue(parameter, values[name], version),
    radix: radixOf(parameter, version),
  }));
}

function numberOfValue(
  parameter: Parameter,
  value: Value | undefined,
  version: CodeVersion,
): number {
  switch (parameter.kind) {
    case 'whole':
      return Number(value) - parameter.min;
    case 'choice':
      return countedValues(parameter.values, version).indexOf(String(value));
    case 'yes-no':
      return value === true ? 1 : 0;
  }
}

function valueOfNumber(parameter: Parameter, number: number, version: CodeVersion): Value {
  switch (parameter.kind) {
    case 'whole':
      return parameter.min + number;
    case 'choice':
      return countedValues(parameter.values, version)[number] ?? '';
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
  const values = fields.take(RADIX.changed) === 1 ? takeValues(fields, activity, version) : {};
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
  const asked = { activity: id, step, values };
  const letters = version === 4 && hasMore(fields) ? takeLetters(fields, asked) : {};
  const hasEdits = version === 4 ? hasMore(fields) : version === 3;
  const { pictures } = extras.value;
  const edits: Result<Pick<SheetSpec, 'edits'>> = hasEdits
    ? takeEdits(fields, tasks, pictures)
    : accept({});
  if (!edits.ok) return edits;
  const spec = { ...asked, seed, tasks, ...choices, ...letters, ...edits.value };
  return accept({ activity, spec });
}

function hasMore(fields: Unpacking): boolean {
  return fields.take(RADIX.changed) === 1;
}

const AT = 'sheet code';

function takeValues(fields: Unpacking, activity: Activity, version: CodeVersion): Values {
  const values = Object.entries(activity.parameters).map(
    ([name, parameter]) =>
      [name, valueOfNumber(parameter, fields.take(radixOf(parameter, version)), version)] as const,
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
  const known = activities.map(([, { codeNumber }]) => codeNumber).sort((a, b) => a - b);
  return refuse({
    code: 'not-a-choice',
    at: `${AT} › activity`,
    got: `number ${number}`,
    choices: known.map(String),
    because: told('reasons', 'code.activities'),
  });
}
