// What one-of-each says to the adult and, through the adult, to the child.
import { type Figure, formOf, isLetter, isNumeral } from '../../figures/index.ts';
import type { Language } from '../../languages/index.ts';
import type { ActivityWords } from '../activity.ts';
import { areTextures } from '../drawing-deed.ts';
import {
  CONTENT_PHRASES,
  capitalised,
  listOf,
  nameAmong,
  numberWord,
  ordinalWord,
} from '../wording.ts';
import { answerSchema, type PARAMETERS, type Printed, STICKER_SIZES } from './task.ts';

type Words = ActivityWords<typeof PARAMETERS, Printed>;

const PARAMETER_WORDS: Words['parameters'] = {
  content: {
    label: 'Fill with',
    help: 'What the grid is filled with. Of shapes in colours, no two share their shape or their colour.',
    choices: CONTENT_PHRASES,
  },
  response: {
    label: 'The child',
    help: 'What the child does with each empty cell. Stickers, counters and colouring in go with colours only. Counters are small parts and not for children under three.',
    choices: {
      point: 'points to what is missing',
      sticker: 'puts a sticker',
      counters: 'lays a counter',
      'colour-in': 'colours in',
      draw: 'draws or writes it',
      cut: 'cuts pieces out and sticks them in',
    },
  },
  order: {
    label: 'Rows and columns',
    help: 'How many rows, columns and different figures there are.',
  },
  empty: { label: 'Empty cells', help: 'How many cells are to be filled.' },
  logic: {
    label: 'Thought needed',
    help: 'The hardest thought that the grid asks for. It never has to be guessed.',
    choices: {
      'one-gap': 'only one is missing in a row or column',
      'row-and-column': 'look along the row and down the column together',
      elsewhere: 'find the only cell of a row or column that can take a figure',
    },
  },
  chain: {
    label: 'One after the other',
    help: 'Some cells can be told only when others have been filled. If not, all can be told at once, in any order.',
  },
  boxes: {
    label: 'Blocks',
    help: 'With four rows and columns, each of the four blocks within thick lines has one of each, too.',
  },
  stickerMm: {
    label: 'Sticker size',
    help: 'How wide the dots are where stickers are used. Choose the size of your stickers.',
    choices: Object.fromEntries(STICKER_SIZES.map((size) => [size, `${size} mm`])),
  },
};

const STEPS: readonly string[] = [
  'two rows of two colours, and one cell is empty',
  'one empty cell becomes two',
  'two rows and colours become three',
  'two empty cells become three',
  'three empty cells become four',
  'some cells can be told only when others are filled',
  'three rows and colours become four',
  'four empty cells become six',
  'row and column must be looked at together',
  'six empty cells become eight',
  'eight empty cells become ten',
  'each block has one of each, too',
  'ten empty cells become twelve',
];

const ENGLISH: Words = {
  name: 'one of each',
  about: 'Looks along rows and columns to find what each of them still lacks.',
  steps: STEPS,
  parameters: PARAMETER_WORDS,
  say: (printed) => [
    'Use the ones at the top.',
    printed.boxes
      ? 'Each row, each column and each block has one of each.'
      : 'Each row and each column has one of each.',
    deedSentence(printed),
  ],
  show,
  help: () => [
    'Cover all but one row that has one gap.',
    'Point to each one at the top and ask: is it in this row already?',
  ],
  easierNow: () => 'Fill some gaps yourself, until each row has only one.',
  harderNow: () => 'Ask which gap can be known first, and why.',
  lookFor: () => [
    'One that fits its row but stands in its column already, or the other way round: one of the two was left out.',
    'Filling in without looking may mean that the rule is not clear yet.',
  ],
  describe,
  answer,
};

export const WORDS: Readonly<Record<Language, Words>> = { en: ENGLISH };

function deedSentence({ response = 'point', figures }: Printed): string {
  switch (response) {
    case 'point':
      return 'What is missing in each empty cell? Point to it at the top and say it.';
    case 'sticker':
      return 'Put the right sticker on each empty circle.';
    case 'counters':
      return 'Lay the right counter on each empty circle.';
    case 'colour-in':
      return 'Colour in the empty ones.';
    case 'cut':
      return 'Cut out the pieces at the bottom and stick each where it belongs.';
    case 'draw':
      return drawSentence(figures);
  }
}

function drawSentence(figures: readonly Figure[]): string {
  if (areTextures(figures)) return 'Fill in the empty ones with the right pattern.';
  const isWritten = figures.every(
    (figure) => isLetter(formOf(figure)) || isNumeral(formOf(figure)),
  );
  return isWritten
    ? 'Write the right one in each empty cell.'
    : 'Draw the right one in each empty cell.';
}

function show({ response }: Printed): string {
  const how =
    'Run a finger along a row with one gap and name what is there; then ask which one is missing, and do the same down a column.';
  if (response === 'counters') {
    return `${how} Counters are small parts: keep them from children under three.`;
  }
  if (response === 'cut')
    return `${how} Lay out scissors and glue, and let all pieces lie loose first.`;
  return response === 'sticker' ? `${how} Lay out stickers of all colours.` : how;
}

function describe(printed: Printed): string {
  const { rows, figures, boxes } = printed;
  const count = numberWord(rows.length);
  const lines = rows.map((row, index) => {
    const names = row.map((figure) => (figure ? nameAmong(figures, figure) : 'empty'));
    return `${capitalised(ordinalWord(index))} row: ${names.join(', ')}.`;
  });
  const names = figures.map((figure) => nameAmong(figures, figure));
  const blocks = boxes ? ' Thick lines make four blocks of four cells.' : '';
  return `A grid of ${count} rows and ${count} columns.${blocks} To use: ${listOf(names)}. ${lines.join(' ')}`;
}

/** What each row lacks, from left to right. */
function answer({ rows, figures }: Printed, key: unknown): string {
  const missing = [...answerSchema.parse(key).figures];
  const lines = rows.flatMap((row, index) => {
    const filled = missing.splice(0, row.filter((figure) => figure === null).length);
    const names = filled.map((figure) => nameAmong(figures, figure));
    return names.length > 0 ? [`${ordinalWord(index)} row ${listOf(names)}`] : [];
  });
  return `From left to right, the empty cells take: ${lines.join('; ')}.`;
}
