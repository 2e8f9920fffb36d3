// What copy-pattern says to the adult and, through the adult, to the child.
import type { Language } from '../../languages/index.ts';
import type { ActivityWords } from '../activity.ts';
import { CONTENT_PHRASES, listOf } from '../wording.ts';
import { classOf } from './classes.ts';
import { counted, describeTask, elementCount, nounsOf } from './description.ts';
import type { PARAMETERS } from './parameters.ts';
import { readingOf } from './reading.ts';
import { lookalikesOf } from './solve.ts';
import { answerSchema, CONTENTS, type Content, type CopyResponse, type Printed } from './task.ts';

type Words = ActivityWords<typeof PARAMETERS, Printed>;

const OWN_PHRASES: Readonly<Partial<Record<Content, string>>> = {
  dots: 'dots',
  colours: 'coloured dots',
  'filled-cells': 'filled cells',
  lines: 'lines from point to point',
};

const PARAMETER_WORDS: Words['parameters'] = {
  content: {
    label: 'Copy',
    help: 'What the model is made of.',
    choices: Object.fromEntries(
      CONTENTS.map((content) => [content, OWN_PHRASES[content] ?? CONTENT_PHRASES[content] ?? '']),
    ),
  },
  response: {
    label: 'The child',
    help: 'What the child does. It must suit what is copied.',
    choices: {
      draw: 'draws',
      sticker: 'puts stickers',
      'colour-in': 'colours in',
      'draw-line': 'draws lines',
    },
  },
  rows: { label: 'Rows', help: 'How many rows of cells or points the model has.' },
  columns: { label: 'Columns', help: 'How many columns of cells or points the model has.' },
  elements: { label: 'How much', help: 'How many dots, filled cells or lines the model has.' },
  kinds: {
    label: 'Different ones',
    help: 'How many different colours, shapes, signs or letters the model has. Dots and lines are all alike.',
  },
  boxes: { label: 'Boxes', help: 'How many boxes the model is copied into.' },
  givens: {
    label: 'Already there',
    help: 'How much of each box is printed. Each box is begun in another way.',
    choices: { none: 'nothing', some: 'about half', most: 'nearly all' },
  },
  symmetry: {
    label: 'Symmetry',
    help: 'Models with a mirror line are easier to see as one. Models without any show whether left and right are kept apart.',
    choices: {
      any: 'whatever comes',
      mirror: 'with a mirror line',
      turn: 'the same when turned, with no mirror line',
      none: 'none',
    },
  },
  joined: {
    label: 'Hangs together',
    help: 'Whether everything in the model touches. Scattered parts are harder to place.',
  },
  slanted: {
    label: 'Slanted lines',
    help: 'Whether some of the lines are slanted. Hard before five.',
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
  'two dots of one colour among four places, one box',
  'one box becomes two',
  'one colour becomes two',
  'two dots become three',
  'two rows become three',
  'two columns become three',
  'three dots become four',
  'the model is no longer the same when mirrored or turned',
  'dots for stickers become cells to colour in',
  'half of each box is there already',
  'two colours become three',
  'four cells become five',
  'coloured cells become lines from point to point',
  'some lines are slanted',
  'three columns of points become four',
  'five lines become six',
  'the lines may lie apart',
];

const ENGLISH: Words = {
  name: 'copy the pattern',
  about: 'Looks at a pattern and makes it again, each part in its own place.',
  steps: STEPS,
  parameters: PARAMETER_WORDS,
  say,
  show,
  help: () => [
    'Cover all but the top of the model and of the box, and go on bit by bit.',
    'Put one finger on a place of the model and one on the same place in the box.',
  ],
  easierNow: () => 'Put in the first two yourself, and let the child finish.',
  harderNow: () =>
    'Let the child look well, cover the model, finish a box, and uncover it to compare.',
  lookFor: () => [
    'The right things in wrong places: the place may have been lost on the way to the box.',
    'If a copy is turned or mirrored, compare one corner at a time.',
  ],
  describe: describeTask,
  answer,
};

export const WORDS: Readonly<Record<Language, Words>> = { en: ENGLISH };

const DEEDS: Readonly<Record<Exclude<CopyResponse, 'draw'>, string>> = {
  sticker: 'Put a sticker wherever this one has a dot, in the same colour.',
  'colour-in': 'Colour in what is coloured here, in the same colour.',
  'draw-line': 'Draw the lines that this one has, from point to point.',
};

function say(printed: Printed): readonly string[] {
  const { boxes } = printed;
  const isBegun = boxes.some(({ cells }) => elementCount(cells) > 0);
  return [
    boxes.length === 1 ? 'Make the same in the box.' : 'Make the same in every box.',
    deedSentence(printed),
    ...(isBegun ? ['A part is there already. What is missing?'] : []),
    'Each one goes in the very same place.',
  ];
}

function deedSentence(printed: Printed): string {
  const { content, response } = readingOf(printed);
  if (response !== 'draw') return DEEDS[response];
  const [one] = nounsOf(content);
  const isColoured = printed.model.cells.some((figure) => figure?.colour !== undefined);
  const how = content === 'dots' ? '' : isColoured ? ', in the same colour' : ', just like it';
  return `Draw a ${one} wherever this one has a ${one}${how}.`;
}

function show(printed: Printed): string {
  const { content } = readingOf(printed);
  const [part, place] = content === 'lines' ? ['line', 'points'] : ['cell', 'place'];
  const first = `Point to one ${part === 'cell' ? 'filled place' : part} of the model on the grey plate, then to the same ${place} in the box, and do that one together.`;
  const boxes = [...new Set(lookalikesOf(printed).map(({ box }) => `box ${box + 1}`))];
  if (boxes.length === 0) return first;
  return `${first} What is printed in ${listOf(boxes)} would also fit a mirrored or turned copy: if one comes, lay a finger on the same corner of model and box.`;
}

/** What finished boxes hold, how much is to be added, and whether a mirrored or turned copy would show. */
function answer(printed: Printed, key: unknown): string {
  const { content } = readingOf(printed);
  const all = elementCount(printed.model.cells);
  const added = answerSchema
    .parse(key)
    .map(({ cells }, box) => elementCount(cells) - elementCount(printed.boxes[box]?.cells ?? []));
  const [least, most] = [Math.min(...added), Math.max(...added)];
  const toAdd = least === most ? `${least}` : `${least} to ${most}`;
  const symmetries = {
    mirror: 'The model has a mirror line.',
    turn: 'The model looks the same turned half round.',
    none: 'Mirrored or turned, the model would look different.',
  };
  return [
    `Every box becomes the model: ${counted(all, content)} in the same places, ${toAdd} of them to be added in each.`,
    symmetries[classOf(printed.model).symmetry],
  ].join(' ');
}
