// What mirror-half says to the adult and, through the adult, to the child.
import { contentName, type Figure } from '../../figures/index.ts';
import type { Language } from '../../languages/index.ts';
import type { ActivityWords } from '../activity.ts';
import { capitalised, counted, nameAmong, numberWord, ordinalWord } from '../wording.ts';
import {
  answerSchema,
  type Cells,
  CONTENTS,
  isChosen,
  type PARAMETERS,
  type Printed,
  type Response,
  responseTo,
} from './task.ts';

type Words = ActivityWords<typeof PARAMETERS, Printed>;

const PARAMETER_WORDS: Words['parameters'] = {
  content: {
    label: 'Made of',
    help: 'What stands in the places. Letters and the like are drawn from those that look the same in the mirror. Directions turn round in it, which is very hard.',
    choices: Object.fromEntries(CONTENTS.map((content) => [content, contentName(content)])),
  },
  response: {
    label: 'The child',
    help: 'What the child does: makes the missing part, or chooses it among halves that are shown.',
    choices: {
      sticker: 'puts stickers',
      'colour-in': 'colours in',
      draw: 'draws',
      point: 'points to the half that fits',
      ring: 'draws a ring round the half that fits',
    },
  },
  axis: {
    label: 'Mirror line',
    help: 'How the line lies. With both lines a quarter is given, and three are to be made.',
    choices: { upright: 'upright', level: 'level', both: 'one of each' },
  },
  deep: { label: 'Places deep', help: 'How many places the given part has from the line outward.' },
  along: { label: 'Places along', help: 'How many places lie along the line.' },
  elements: { label: 'How much', help: 'How many places of the given part hold something.' },
  kinds: { label: 'Different ones', help: 'How many different figures there are.' },
  given: {
    label: 'Printed part',
    help: 'Where the given part is. For the left hand, which would lie on it, no part is given that is left of what is made.',
    choices: { first: 'left or upper', second: 'right or lower' },
  },
  choices: {
    label: 'To choose from',
    help: 'How many halves there are to choose from. Only where one is chosen.',
  },
  wrong: {
    label: 'Wrong halves',
    help: 'What is wrong with the others. Shifted copies are mirror images of the right half, which is very hard side by side. Only where one is chosen.',
    choices: {
      far: 'half of it in other places',
      near: 'one thing wrong',
      turned: 'one turned upside down, the others with one thing wrong',
      copied: 'one shifted, one turned, the others with one thing wrong',
    },
  },
  stickerMm: {
    label: 'Sticker size',
    help: 'How wide the stickers are. The circles are drawn at this size.',
    choices: {
      '8': '8 mm',
      '10': '10 mm',
      '13': '13 mm',
      '16': '16 mm',
      '19': '19 mm',
      '25': '25 mm',
    },
  },
};

const STEPS: readonly string[] = [
  'two stickers of one colour beside an upright line, two places deep and two along',
  'one colour becomes two',
  'two places along the line become three',
  'two stickers become three',
  'two places deep become three',
  'three stickers become four',
  'stickers become cells to colour in',
  'two colours become three',
  'the mirror line lies level',
  'four cells become six',
  'three places along the line become four',
  'coloured cells become shapes to draw',
  'two mirror lines: a quarter is given, and three are to be made',
  'six shapes become eight',
];

const DEEDS: Readonly<Record<Response, string>> = {
  sticker: 'Put a sticker wherever you would see one in the mirror.',
  'colour-in': 'Colour in what you would see in the mirror.',
  draw: 'Draw what you would see in the mirror.',
  point: 'Put your finger on the half that you would see in the mirror.',
  ring: 'Draw a ring round the half that you would see in the mirror.',
};

const ENGLISH: Words = {
  name: 'finish the other half',
  about: 'Sees one half of a picture and makes or finds the other, as a mirror would show it.',
  steps: STEPS,
  parameters: PARAMETER_WORDS,
  say: (printed) => [
    printed.axis === 'both' ? 'The thick lines are mirrors.' : 'The thick line is a mirror.',
    DEEDS[responseTo(printed)],
  ],
  show,
  help: (printed) => [
    'Leave the mirror standing on the line, and look into it for one thing at a time.',
    ...(isChosen(responseTo(printed))
      ? ['Cover all halves but two, the right one among them.']
      : []),
  ],
  easierNow: (printed) =>
    isChosen(responseTo(printed))
      ? 'Cover some of the wrong halves.'
      : 'Make the ones nearest to the line yourself, and let the child go on.',
  harderNow: () => 'Keep the mirror away until the end, and then look whether it was so.',
  lookFor: () => [
    'Moved across but not turned over: what is near the line must be near it on both sides.',
    'On the right row but too far from the line: count the places together.',
  ],
  describe,
  answer,
};

export const WORDS: Readonly<Record<Language, Words>> = { en: ENGLISH };

function show(printed: Printed): string {
  const mirror =
    'Stand a small mirror on the thick line and look into it together, then take it away.';
  return isChosen(responseTo(printed))
    ? `${mirror} Point to what lies nearest to the line, and ask of each half below whether it has the same just as near.`
    : `${mirror} Point to one thing, count how far it is from the line, count as far on the other side, and make that one together.`;
}

function describe(printed: Printed): string {
  const { part, axis, given = 'first', offered = [] } = printed;
  const names = [part, ...offered].flatMap(({ cells }) =>
    cells.filter((figure) => figure !== null),
  );
  const [height, side] = [
    given === 'second' ? 'lower' : 'upper',
    given === 'first' ? 'left' : 'right',
  ];
  const where = {
    upright: `${side} of an upright line`,
    level: `${height === 'lower' ? 'below' : 'above'} a level line`,
    both: `at the ${height} ${side} of two lines that cross`,
  };
  const shown = `Given ${where[axis]}: ${rowsInWords(part.cells, part.columns, names)}.`;
  if (offered.length === 0) return `${shown} The rest is empty.`;
  const halves = offered.map(
    ({ cells }, index) =>
      `${capitalised(ordinalWord(index))} half: ${rowsInWords(cells, part.columns, names)}.`,
  );
  return [shown, ...halves].join(' ');
}

function rowsInWords(cells: Cells, columns: number, names: readonly Figure[]): string {
  const rows = Array.from({ length: Math.ceil(cells.length / columns) }, (_, row) =>
    cells
      .slice(row * columns, (row + 1) * columns)
      .map((figure) => (figure ? nameAmong(names, figure) : 'empty'))
      .join(', '),
  );
  return rows.map((row, index) => `row ${index + 1} ${row}`).join('; ');
}

function answer(printed: Printed, key: unknown): string {
  const read = answerSchema.parse(key);
  if ('choice' in read) {
    return `The ${ordinalWord(read.choice)} of the ${numberWord(printed.offered?.length ?? 0)} halves finishes the picture.`;
  }
  const { part, axis } = printed;
  const there = part.cells.filter((figure) => figure !== null).length;
  const all = read.cells.filter((figure) => figure !== null);
  const columns = axis === 'level' ? part.columns : 2 * part.columns;
  const adding = counted(all.length - there, 'thing', 'things');
  return `Still to be made: ${adding}. The whole picture: ${rowsInWords(read.cells, columns, all)}.`;
}
