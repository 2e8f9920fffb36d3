// Reads one entry from a file or a form: every field known, every size limited.
import { z } from 'zod';
import { DEEDS } from '../activities/index.ts';
import { accept, type Result, refuse, saying, told } from '../base/index.ts';
import { SIGHTS } from '../palette/index.ts';
import {
  CODE_ALPHABET,
  closedObject,
  LONGEST_CODE,
  OWN_PICTURE_FIELDS,
  refusalsOf,
  STOCK_FIELDS,
  wholeNumber,
} from '../sheets/index.ts';
import { type Entry, HELP_LEVELS, MOODS, OUTCOMES, WHYS, WRITING_HANDS } from './entry.ts';
import { ID_FORM } from './ids.ts';

/** Generous for people, narrow for a file made to fill a disk (our own choice). */
const MOST = {
  nickname: 40,
  languages: 8,
  tasks: 32,
  instead: 12,
  place: 999,
  label: 80,
  minutes: 240,
  note: 2000,
  planned: 12,
};
const LATEST_MS = 2 ** 44 - 1;
const LANGUAGE = /^[a-z]{2,3}(-[A-Za-z0-9]{2,8}){0,3}$/;
const MONTH = /^(19|20)\d\d-(0[1-9]|1[0-2])$/;
/** Groups of four characters and a hyphen. */
const MOST_GROUPS = LONGEST_CODE / 5;
const CODE = new RegExp(
  `^[${CODE_ALPHABET}]{4}(-[${CODE_ALPHABET}]{4}){0,${MOST_GROUPS - 2}}(-[${CODE_ALPHABET}]{1,4})?$`,
);

const text = (most: number) => z.string().min(1).max(most);
const id = z.string().regex(ID_FORM, saying(told('reasons', 'expected.id')));
// Its form alone: a record outlives the versions that can read its code.
const code = z.string().regex(CODE, saying(told('reasons', 'expected.code.sheet')));
const day = z.string().refine(isDay, saying(told('reasons', 'expected.day')));

const base = { id, at: wholeNumber(0, LATEST_MS), demo: z.exactOptional(z.literal(true)) };

const childSchema = closedObject({
  ...base,
  kind: z.literal('child'),
  child: id,
  nickname: z.exactOptional(
    text(MOST.nickname).regex(/\S/u, saying(told('reasons', 'expected.nickname'))),
  ),
  birthMonth: z.exactOptional(
    z
      .string()
      .regex(MONTH, saying(told('reasons', 'expected.month')))
      .nullable(),
  ),
  writingHand: z.exactOptional(z.enum(WRITING_HANDS).nullable()),
  colourVision: z.exactOptional(z.enum([...SIGHTS, 'red-green']).nullable()),
  languages: z.exactOptional(
    z
      .array(z.string().regex(LANGUAGE, saying(told('reasons', 'expected.language.tag'))))
      .max(MOST.languages)
      .nullable(),
  ),
  deeds: z.exactOptional(z.array(z.enum(DEEDS)).max(DEEDS.length).nullable()),
});

const insteadSchema = closedObject({
  place: z.exactOptional(wholeNumber(0, MOST.place)),
  label: z.exactOptional(text(MOST.label)),
});

const taskSchema = closedObject({
  outcome: z.enum(OUTCOMES),
  instead: z.exactOptional(z.array(insteadSchema).max(MOST.instead)),
});

const resultSchema = closedObject({
  ...base,
  kind: z.literal('result'),
  child: id,
  code,
  day,
  tasks: z.array(taskSchema).min(1).max(MOST.tasks),
  atOnce: z.exactOptional(z.literal(true)),
  help: z.exactOptional(z.enum(HELP_LEVELS)),
  mood: z.exactOptional(z.enum(MOODS)),
  minutes: z.exactOptional(wholeNumber(0, MOST.minutes)),
  note: z.exactOptional(text(MOST.note)),
});

const planSchema = closedObject({
  ...base,
  kind: z.literal('plan'),
  child: id,
  day,
  sheets: z.array(closedObject({ code, why: z.enum(WHYS) })).max(MOST.planned),
});

const stockSchema = closedObject({
  ...base,
  kind: z.literal('stock'),
  ...STOCK_FIELDS,
});

const pictureSchema = closedObject({ ...base, kind: z.literal('picture'), ...OWN_PICTURE_FIELDS });
const undoneSchema = closedObject({ ...base, kind: z.literal('undone'), entry: id });
const childGoneSchema = closedObject({ ...base, kind: z.literal('child-gone'), child: id });

export const entrySchema: z.ZodType<Entry> = z.discriminatedUnion('kind', [
  childSchema,
  resultSchema,
  planSchema,
  stockSchema,
  pictureSchema,
  undoneSchema,
  childGoneSchema,
]);

/** One entry; `what` names it in refusals. */
export function readEntry(value: unknown, what: string): Result<Entry> {
  const read = entrySchema.safeParse(value);
  return read.success ? accept(read.data) : refuse(...refusalsOf(read.error, value, what));
}

/** Whether the text is a month such as 2022-05, 1900 to 2099. */
export function isMonth(text: string): boolean {
  return MONTH.test(text);
}

/** Whether the text is a day of the calendar, 1900 to 2099. */
export function isDay(text: string): boolean {
  const [, year, month, date] = /^((?:19|20)\d\d)-(\d\d)-(\d\d)$/.exec(text)?.map(Number) ?? [];
  if (year === undefined || month === undefined || date === undefined) return false;
  return month >= 1 && month <= 12 && date >= 1 && date <= daysIn(year, month);
}

function daysIn(year: number, month: number): number {
  const isLeap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  if (month === 2) return isLeap ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}
