// What missing-part says to the adult and, through the adult, to the child.
import type { Language } from '../../languages/index.ts';
import type { ActivityWords } from '../activity.ts';
import { CONTENT_PHRASES, listOf, nameAmong, numberWord, ordinalWord } from '../wording.ts';
import { answerSchema, type PARAMETERS, type Piece, type Printed, responseTo } from './task.ts';

type Words = ActivityWords<typeof PARAMETERS, Printed>;

const RULES = {
  rows: 'every row is alike all along',
  columns: 'every column is alike all down',
  checker: 'two in turn, along and down',
  diagonal: 'three in turn, one further in each row',
  tiles: 'four in a square that comes again and again',
};

const PARAMETER_WORDS: Words['parameters'] = {
  content: {
    label: 'Look at',
    help: 'What the figures of the pattern differ in.',
    choices: CONTENT_PHRASES,
  },
  response: {
    label: 'The child',
    help: 'What the child does. To draw, there are no pieces to choose from.',
    choices: {
      point: 'points to the piece that fits',
      ring: 'draws a ring round the piece that fits',
      join: 'draws a line from the piece to the hole',
      draw: 'draws what is missing',
    },
  },
  rule: { label: 'The pattern', help: 'How the figures follow each other.', choices: RULES },
  second: {
    label: 'The second thing to look at',
    help: 'With two things to look at, such as shape and colour, the second can follow a rule of its own.',
    choices: {
      same: 'goes with the first',
      rows: RULES.rows,
      columns: RULES.columns,
      checker: RULES.checker,
      diagonal: RULES.diagonal,
    },
  },
  field: { label: 'Rows', help: 'How many rows and columns the pattern has.' },
  hole: {
    label: 'Missing',
    help: 'How many figures the missing piece has.',
    choices: { one: 'one figure', two: 'two side by side', four: 'four in a square' },
  },
  choices: { label: 'To choose from', help: 'How many pieces there are, one of which fits.' },
  likeness: {
    label: 'Wrong pieces',
    help: 'Whether the wrong pieces are quite unlike the right one, or like it and like the pattern.',
    choices: { far: 'quite unlike the right one', near: 'rather like the right one' },
  },
};

const STEPS: readonly string[] = [
  'a pattern in rows with one figure missing, and two pieces to choose from',
  'two pieces become three',
  'two figures take turns along and down',
  'the wrong pieces are like the right one or stand in the pattern',
  'three pieces become four',
  'the pattern becomes larger',
  'pointing becomes drawing a ring',
  'three figures take turns, one further in each row',
  'the missing piece has two figures',
  'the colours follow a rule of their own',
];

const ENGLISH: Words = {
  name: 'the missing part',
  about: 'Sees how a pattern goes on and finds the piece that finishes it.',
  steps: STEPS,
  parameters: PARAMETER_WORDS,
  say,
  show: () =>
    'Run a finger along a row and say what comes, then down a column, until you come to the hole, and ask what belongs there. Hold each piece in mind over the hole and ask whether the pattern goes on.',
  help: (printed) => [
    'Say the row aloud up to the hole, then the column.',
    responseTo(printed) === 'draw'
      ? 'Ask about one thing at a time: what is it, and what does it look like?'
      : 'Point to one piece at a time, and ask whether the row would go on like this.',
  ],
  easierNow: (printed) =>
    responseTo(printed) === 'draw'
      ? 'Name two things that it could be, and let the child choose.'
      : 'Cover all pieces but two, the right one among them.',
  harderNow: (printed) =>
    responseTo(printed) === 'draw'
      ? 'Ask what would come next if the pattern went on.'
      : 'Ask what is wrong with each of the other pieces.',
  lookFor: () => [
    'What stands next to the hole may be taken again if the row is not yet read as a pattern.',
    'If it fits along the row and not down the column, go down the column with a finger.',
  ],
  describe,
  answer,
};

export const WORDS: Readonly<Record<Language, Words>> = { en: ENGLISH };

const DOING = {
  point: 'Put your finger on the piece that fits.',
  ring: 'Draw a ring round the piece that fits.',
  join: 'Draw a line from the piece that fits to the hole.',
  draw: 'Draw what belongs there.',
} as const;

function say(printed: Printed): readonly string[] {
  const response = responseTo(printed);
  const question = response === 'draw' ? [] : ['Which piece finishes the pattern?'];
  return ['Look, the pattern has a hole.', ...question, DOING[response]];
}

function describe(printed: Printed): string {
  const { field, columns, offered = [] } = printed;
  const rows = Array.from({ length: Math.ceil(field.length / columns) }, (_, row) =>
    field
      .slice(row * columns, (row + 1) * columns)
      .map((figure) => (figure ? nameIn(printed, [figure]) : 'the hole'))
      .join(', '),
  );
  const pieces = offered.map((piece, index) => `${index + 1} ${nameIn(printed, piece)}`);
  const choices = pieces.length > 0 ? ` To choose from: ${pieces.join('; ')}.` : '';
  return `A pattern in ${numberWord(rows.length)} rows: ${rows.join('; ')}.${choices}`;
}

function answer(printed: Printed, key: unknown): string {
  const { figures } = answerSchema.parse(key);
  const name = nameIn(printed, figures);
  const { offered = [] } = printed;
  const place = offered.findIndex((piece) => nameIn(printed, piece) === name);
  return place < 0 ? `Missing: ${name}.` : `The ${ordinalWord(place)} piece fits: ${name}.`;
}

/** The figures of a piece, with sizes by rank among those of the task. */
function nameIn({ field, offered = [] }: Printed, piece: Piece): string {
  const all = [...field, ...offered.flat()].filter((figure) => figure !== null);
  return listOf(piece.map((figure) => nameAmong(all, figure)));
}
