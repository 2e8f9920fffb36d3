// What a sheet code carries of changes, task by task: from version 3 on.
import type { Activity } from '../activities/index.ts';
import { accept, MAX_SEED, type Refusal, type Result, refuse, told } from '../base/index.ts';
import {
  isIdle,
  MOST_FACTS,
  MOST_NUMBER,
  MOST_PLACES,
  MOST_SHAPE_CHANGES,
  type ShapeChange,
  type TaskEdit,
} from '../editing/index.ts';
import {
  DOT_LAYOUTS,
  FILLS,
  type Figure,
  FORMS,
  formOf,
  idOfOwn,
  isOwnPicture,
  MOST_DOTS,
  ownFormOf,
  type PictureChoice,
  SIGNS,
  TEXTURES,
} from '../figures/index.ts';
import { COLOUR_NAMES } from '../palette/index.ts';
import { digitsNeeded, type Packed, type Unpacking } from './code-packing.ts';

/** Room for what may be added without a new version: more places, forms, fills, colours. */
const RADIX = {
  edits: 16,
  task: 16,
  has: 2,
  shapes: MOST_SHAPE_CHANGES + 1,
  shapeKind: 4,
  list: 64,
  at: 64,
  figures: 64,
  place: MOST_PLACES,
  attributes: 1024,
  facts: 16,
  fact: MOST_FACTS,
  factKind: 4,
  number: MOST_NUMBER + 1,
  word: 16,
};
const SEED_RADIX = MAX_SEED + 1;
/** Sizes are told in thousandths, in which generators draw them. */
const THOUSANDTHS = 4096;
/** Digits that the number of an own picture takes, and those that say which there are. */
const PICTURE_DIGITS = { each: 7, all: 3 };
/** Digits of a code that changes may take: so many that with all else that a sheet has it is within `LONGEST_CODE`. */
export const MOST_DIGITS = 3168;

/** How one attribute of a figure is told. */
interface AttributeCode {
  readonly name: keyof Figure;
  readonly radix: number;
  /** `own`: the numbers of the own pictures that the sheet names. */
  readonly write: (figure: Figure, own: readonly string[]) => number;
  readonly read: (number: number, own: readonly string[]) => Partial<Figure> | undefined;
}

function named<K extends keyof Figure>(
  name: K,
  radix: number,
  values: readonly NonNullable<Figure[K]>[],
): AttributeCode {
  return {
    name,
    radix,
    write: (figure) => values.indexOf(figure[name] as NonNullable<Figure[K]>),
    read: (number) => {
      const value = values[number];
      return value === undefined ? undefined : { [name]: value };
    },
  };
}

function numbered(
  name: 'size' | 'dotSize' | 'turn' | 'count',
  radix: number,
  units: number,
): AttributeCode {
  return {
    name,
    radix,
    write: (figure) => Math.round(units * (figure[name] ?? 0)),
    read: (number) => ({ [name]: number / units }),
  };
}

const FORM_RADIX = 1024;
/** A form that is always there by its place; an own picture by its place among those of the sheet, from the end. */
const FORM: AttributeCode = {
  name: 'form',
  radix: FORM_RADIX,
  write: (figure, own) => {
    const form = formOf(figure);
    return isOwnPicture(form) ? FORM_RADIX - 1 - own.indexOf(idOfOwn(form)) : FORMS.indexOf(form);
  },
  read: (number, own) => {
    const id = own[FORM_RADIX - 1 - number];
    const form = id === undefined ? FORMS[number] : ownFormOf(id);
    return form === undefined ? undefined : { form };
  },
};

/** In the order of the bits that say which of them a figure has; the next bit says that nothing stands there. */
const ATTRIBUTES: readonly AttributeCode[] = [
  FORM,
  named('colour', 16, COLOUR_NAMES),
  numbered('size', THOUSANDTHS, 1000),
  numbered('turn', 360, 1),
  named('mirrored', 2, [false, true]),
  numbered('count', MOST_DOTS + 1, 1),
  named('layout', 8, DOT_LAYOUTS),
  numbered('dotSize', THOUSANDTHS, 1000),
  named('fill', 16, FILLS),
];
const NOTHING = 2 ** ATTRIBUTES.length;
const FACT_KINDS: readonly (readonly string[])[] = [COLOUR_NAMES, SIGNS, TEXTURES];

/** The fields of the changes of a sheet, in the order in which `takeEdits` takes them out again; the own pictures name forms. */
export function editFields(
  edits: readonly TaskEdit[],
  pictures: PictureChoice | undefined,
): readonly Packed[] {
  const own = pictures?.ids ?? [];
  return [
    { value: edits.length, radix: RADIX.edits },
    ...edits.flatMap((edit) => fieldsOfEdit(edit, own)),
  ];
}

/** Why a code has no room for these changes; `undefined` where it has. */
export function changesRefusal(
  activity: Activity,
  edits: readonly TaskEdit[] | undefined,
  pictures: PictureChoice | undefined,
): Refusal | undefined {
  if (edits === undefined) return undefined;
  const figures = Math.max(...edits.map((edit) => edit.figures.length));
  const facts = Math.max(...edits.map((edit) => edit.facts.length));
  const isCounted = figures < RADIX.figures && facts < RADIX.facts;
  const digits = isCounted
    ? digitsNeeded(editFields(edits, pictures).map(({ radix }) => radix))
    : Infinity;
  const taken = pictures ? PICTURE_DIGITS.all + PICTURE_DIGITS.each * pictures.ids.length : 0;
  const most = MOST_DIGITS - taken;
  if (digits <= most) return undefined;
  const changes = edits.reduce((sum, edit) => sum + edit.figures.length + edit.facts.length, 0);
  return {
    code: 'does-not-fit',
    at: `${activity.id} › changes`,
    got: changes,
    max: Math.min(changes - 1, Math.floor((changes * most) / digits)),
    unit: told('reasons', 'amount.changes'),
    advice: told('reasons', 'do.take-back'),
  };
}

function fieldsOfEdit(
  { task, seed, shape, figures, facts }: TaskEdit,
  own: readonly string[],
): readonly Packed[] {
  return [
    { value: task, radix: RADIX.task },
    { value: seed === undefined ? 0 : 1, radix: RADIX.has },
    ...(seed === undefined ? [] : [{ value: seed, radix: SEED_RADIX }]),
    { value: shape.length, radix: RADIX.shapes },
    ...shape.flatMap(({ kind, list, at, together }) => [
      { value: (kind === 'add' ? 0 : 1) + (together ? 2 : 0), radix: RADIX.shapeKind },
      { value: list, radix: RADIX.list },
      { value: at, radix: RADIX.at },
    ]),
    { value: figures.length, radix: RADIX.figures },
    ...figures.flatMap(([place, figure]) => [
      { value: place, radix: RADIX.place },
      ...fieldsOfFigure(figure, own),
    ]),
    { value: facts.length, radix: RADIX.facts },
    ...facts.flatMap(([fact, value]) => [
      { value: fact, radix: RADIX.fact },
      ...fieldsOfFact(value),
    ]),
  ];
}

function fieldsOfFigure(figure: Figure | null, own: readonly string[]): readonly Packed[] {
  if (figure === null) return [{ value: NOTHING, radix: RADIX.attributes }];
  const stated = ATTRIBUTES.map(({ name }) => figure[name] !== undefined);
  const mask = stated.reduce((sum, is, bit) => sum + (is ? 2 ** bit : 0), 0);
  return [
    { value: mask, radix: RADIX.attributes },
    ...ATTRIBUTES.filter((_, bit) => stated[bit]).map(({ write, radix }) => ({
      value: write(figure, own),
      radix,
    })),
  ];
}

function fieldsOfFact(value: number | string): readonly Packed[] {
  if (typeof value === 'number') {
    return [
      { value: 0, radix: RADIX.factKind },
      { value, radix: RADIX.number },
    ];
  }
  const kind = FACT_KINDS.findIndex((words) => words.includes(value));
  return [
    { value: kind + 1, radix: RADIX.factKind },
    { value: FACT_KINDS[kind]?.indexOf(value) ?? -1, radix: RADIX.word },
  ];
}

/** Takes the changes out again; refuses none at all, more than the sheet has tasks, and what no figure can be. */
export function takeEdits(
  fields: Unpacking,
  tasks: number,
  pictures: PictureChoice | undefined,
): Result<{ readonly edits: readonly TaskEdit[] }> {
  const count = fields.take(RADIX.edits);
  const own = pictures?.ids ?? [];
  const edits = Array.from({ length: Math.min(count, tasks) }, () => takeEdit(fields, own));
  const read = edits.flatMap((edit) => edit ?? []);
  const isInOrder = read.every(
    ({ task }, index) => index === 0 || task > (read[index - 1]?.task ?? 0),
  );
  const isWhole = read.length === count && isInOrder && !read.some(isIdle);
  if (count === 0 || !isWhole || read.some(({ task }) => task >= tasks)) {
    return refuse({
      code: 'unreadable',
      at: 'sheet code › changes',
      got: 'changes that no sheet has',
      expected: told('reasons', 'expected.code.printed'),
    });
  }
  return accept({ edits: read });
}

function takeEdit(fields: Unpacking, own: readonly string[]): TaskEdit | undefined {
  const task = fields.take(RADIX.task);
  const seed = fields.take(RADIX.has) === 1 ? fields.take(SEED_RADIX) : undefined;
  const shape = repeated(fields.take(RADIX.shapes), () => takeShape(fields));
  const figures = repeated(fields.take(RADIX.figures), () => {
    const place = fields.take(RADIX.place);
    return [place, takeFigure(fields, own)] as const;
  });
  const facts = repeated(fields.take(RADIX.facts), () => {
    const fact = fields.take(RADIX.fact);
    return [fact, takeFact(fields)] as const;
  });
  const known = figures.flatMap(([place, figure]) =>
    figure === undefined ? [] : [[place, figure] as const],
  );
  const told = facts.flatMap(([fact, value]) =>
    value === undefined ? [] : [[fact, value] as const],
  );
  if (known.length < figures.length || told.length < facts.length) return undefined;
  return { task, ...(seed === undefined ? {} : { seed }), shape, figures: known, facts: told };
}

function repeated<T>(times: number, take: () => T): readonly T[] {
  return Array.from({ length: times }, take);
}

function takeShape(fields: Unpacking): ShapeChange {
  const kind = fields.take(RADIX.shapeKind);
  return {
    kind: kind % 2 === 0 ? 'add' : 'take',
    list: fields.take(RADIX.list),
    at: fields.take(RADIX.at),
    together: kind >= 2,
  };
}

function takeFigure(fields: Unpacking, own: readonly string[]): Figure | null | undefined {
  const mask = fields.take(RADIX.attributes);
  if (mask === NOTHING) return null;
  const parts = ATTRIBUTES.filter((_, bit) => mask & (2 ** bit)).map(({ radix, read }) =>
    read(fields.take(radix), own),
  );
  return parts.some((part) => part === undefined) ? undefined : Object.assign({}, ...parts);
}

function takeFact(fields: Unpacking): number | string | undefined {
  const kind = fields.take(RADIX.factKind);
  return kind === 0 ? fields.take(RADIX.number) : FACT_KINDS[kind - 1]?.[fields.take(RADIX.word)];
}
