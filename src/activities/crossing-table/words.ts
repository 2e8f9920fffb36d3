// What crossing-table says to the adult and, through the adult, to the child.
import {
  attributesOf,
  colourName,
  contentName,
  type Figure,
  figureName,
} from '../../figures/index.ts';
import type { Language } from '../../languages/index.ts';
import type { ActivityWords } from '../activity.ts';
import { listOf, nameAmong, numberWord, ordinalWord } from '../wording.ts';
import {
  answerSchema,
  CONTENTS,
  type Content,
  type Head,
  type PARAMETERS,
  type Printed,
  responseTo,
} from './task.ts';

type Words = ActivityWords<typeof PARAMETERS, Printed>;

const PARAMETER_WORDS: Words['parameters'] = {
  content: {
    label: 'Look at',
    help: 'The two things that rows and columns are about. Of shapes in colours and sizes, the columns are about colour and size together.',
    choices: Object.fromEntries(CONTENTS.map((content) => [content, phraseOf(content)])),
  },
  response: {
    label: 'The child',
    help: 'What the child does. Where it draws, nothing is offered below the table.',
    choices: {
      point: 'points to the cell for each',
      join: 'draws a line from each to its cell',
      cut: 'cuts them out and sticks them in',
      draw: 'draws into the empty cells',
    },
  },
  rows: { label: 'Rows', help: 'How many rows the table has.' },
  columns: { label: 'Columns', help: 'How many columns the table has.' },
  empty: { label: 'Empty cells', help: 'How many cells are empty. Each has one figure.' },
  heads: {
    label: 'Heads',
    help: 'Whether it is printed what each row and each column is about. If not, it is to be found from the figures that stand there.',
    choices: {
      both: 'beside the rows and above the columns',
      one: 'of rows or of columns only',
      none: 'none',
    },
  },
  extra: {
    label: 'Left over',
    help: 'How many of the figures below the table belong into no cell.',
  },
};

const STEPS: readonly string[] = [
  'a table of two by two, and one figure to find a place for',
  'one figure becomes two',
  'two figures become three',
  'pointing becomes drawing a line',
  'two columns become three',
  'three figures become four',
  'two rows become three',
  'drawing a line becomes cutting out and sticking in',
  'four figures become six',
  'one figure belongs nowhere',
  'what the rows, or the columns, are about has to be found',
  'three columns become four',
  'both have to be found',
  'three rows become four',
  'six figures become nine',
];

const ENGLISH: Words = {
  name: 'crossing table',
  about: 'Minds two things at once: what a row is about and what a column is about.',
  steps: STEPS,
  parameters: PARAMETER_WORDS,
  say,
  show,
  help: () => [
    'Cover all rows but one, and ask what all in it have; then do the same with the columns.',
  ],
  easierNow: () => 'Show the row yourself, and let the child find the column.',
  harderNow: () => 'Point to any cell and ask what belongs there, before looking at what there is.',
  lookFor: () => [
    'Right row and wrong column, or the other way round: one thing was minded and the other left out.',
  ],
  describe,
  answer,
};

export const WORDS: Readonly<Record<Language, Words>> = { en: ENGLISH };

/** Such as "capital letters in colours". */
function phraseOf(content: Content): string {
  const isSingle = attributesOf(content).length === 1;
  return isSingle ? `${contentName(content)} in colours` : contentName(content);
}

function say(printed: Printed): readonly string[] {
  const { rowHeads, columnHeads } = printed;
  return [
    rowHeads
      ? 'The picture beside a row shows what all in that row have.'
      : 'Find out what all in a row have in common.',
    columnHeads
      ? 'The picture above a column shows what all in that column have.'
      : 'Find out what all in a column have in common.',
    deedSentence(printed),
    ...(hasExtra(printed) ? ['Not every one has a place.'] : []),
  ];
}

function deedSentence(printed: Printed): string {
  switch (responseTo(printed)) {
    case 'point':
      return 'Where does each one below belong? Point to its place.';
    case 'join':
      return 'Draw a line from each one below to its place.';
    case 'cut':
      return 'Cut out the pieces below and stick each in its place.';
    case 'draw':
      return 'Draw into each empty place what belongs there.';
  }
}

function hasExtra({ rows, loose = [] }: Printed): boolean {
  return loose.length > rows.flat().filter((figure) => figure === null).length;
}

function show(printed: Printed): string {
  const how =
    'Put one finger on a row and one on a column, move them until they meet, and ask what has both.';
  const isCut = responseTo(printed) === 'cut';
  return isCut ? `${how} Lay out scissors and glue, and let all pieces lie loose first.` : how;
}

function describe(printed: Printed): string {
  const { rows, rowHeads, columnHeads, loose } = printed;
  const all = figuresOf(printed);
  const [down, across] = [numberWord(rows.length), numberWord(rows[0]?.length ?? 0)];
  const lines = rows.map((row, index) => {
    const names = row.map((figure) => (figure ? nameAmong(all, figure) : 'empty'));
    const head = rowHeads?.[index];
    const about = head ? ` (${headPhrase(head, printed)})` : '';
    return `Row ${index + 1}${about}: ${names.join(', ')}.`;
  });
  const heads = columnHeads?.map((head) => headPhrase(head, printed));
  return [
    `A table of ${down} rows and ${across} columns.`,
    ...(heads ? [`Above the columns: ${heads.join('; ')}.`] : []),
    ...lines,
    ...(loose ? [`Below: ${loose.map((figure) => nameAmong(all, figure)).join('; ')}.`] : []),
  ].join(' ');
}

/** The one thing that a head shows. */
function headPhrase(head: Head, printed: Printed): string {
  const { form, colour, size } = head;
  if (form !== undefined) return figureName(head);
  const heads = [printed.rowHeads, printed.columnHeads].find((list) => list?.includes(head)) ?? [];
  const parts = [
    ...(size === undefined ? [] : [sizeAmong(size, heads)]),
    ...(colour === undefined ? [] : [colourName(colour)]),
  ];
  return parts.join(' and ');
}

/** Such as "small", by the rank of a size among those of the heads. */
function sizeAmong(size: number, heads: readonly Head[]): string {
  const circle = { form: 'circle' } as const;
  const all = heads.map((head): Figure => ({ ...circle, size: head.size }));
  return nameAmong(all, { ...circle, size }).replace(` ${figureName(circle)}`, '');
}

/** All figures that sizes are ranked among. */
function figuresOf({ rows, loose = [], rowHeads = [], columnHeads = [] }: Printed) {
  const shown = [...rows.flat(), ...loose].filter((figure) => figure !== null);
  const sized = [...rowHeads, ...columnHeads].filter(({ size }) => size !== undefined);
  return [...shown, ...sized];
}

function answer(printed: Printed, key: unknown): string {
  const figures = answerSchema.parse(key).figures;
  const all = [...figuresOf(printed), ...figures];
  const columns = printed.rows[0]?.length ?? 1;
  const empty = printed.rows.flat().flatMap((figure, cell) => (figure === null ? [cell] : []));
  const places = empty.map((cell, index) => {
    const where = `${ordinalWord(Math.floor(cell / columns))} row, ${ordinalWord(cell % columns)} column`;
    return `${nameAmong(all, figures[index] ?? {})} in the ${where}`;
  });
  return `Into the empty cells go: ${listOf(places)}.`;
}
