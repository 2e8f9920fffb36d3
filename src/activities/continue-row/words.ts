// What continue-row says to the adult and, through the adult, to the child.
import { type Figure, figureName } from '../../figures/index.ts';
import type { Language } from '../../languages/index.ts';
import type { ActivityWords } from '../activity.ts';
import { CONTENT_PHRASES } from '../wording.ts';
import { answerSchema, type PARAMETERS, type Printed, responseTo, STICKER_SIZES } from './task.ts';
import { UNITS } from './units.ts';

type Words = ActivityWords<typeof PARAMETERS, Printed>;

const PARAMETER_WORDS: Words['parameters'] = {
  content: {
    label: 'Look at',
    help: 'What the row is made of.',
    choices: CONTENT_PHRASES,
  },
  response: {
    label: 'The child',
    help: 'What the child does. Stickers and colouring in go with colours only.',
    choices: {
      point: 'points to the right one',
      ring: 'rings the right one',
      sticker: 'puts a sticker',
      'colour-in': 'colours in',
      draw: 'draws',
    },
  },
  unit: {
    label: 'What repeats',
    help: 'The part that comes again and again. Each letter is another figure.',
    choices: Object.fromEntries(UNITS.map((unit) => [unit, spelled(unit)])),
  },
  second: {
    label: 'What repeats in the second thing to look at',
    help: 'With two things to look at, such as shape and colour, each can repeat in its own way.',
    choices: {
      same: 'the same as in the first',
      AB: spelled('AB'),
      AAB: spelled('AAB'),
      ABB: spelled('ABB'),
      ABC: spelled('ABC'),
    },
  },
  shown: { label: 'Shown', help: 'How many figures of the row are shown.' },
  missing: { label: 'Missing', help: 'How many figures of the row are to be found.' },
  gap: {
    label: 'Empty places',
    help: 'Where in the row the empty places are.',
    choices: { end: 'at the end', middle: 'inside the row' },
  },
  choices: {
    label: 'To choose from',
    help: 'How many figures stand below the row, where the child points or rings.',
  },
  stickerMm: {
    label: 'Sticker size',
    help: 'How wide the dots are where stickers are used. Choose the size of your stickers.',
    choices: Object.fromEntries(STICKER_SIZES.map((size) => [size, `${size} mm`])),
  },
};

const STEPS: readonly string[] = [
  'two colours in turn, and two to choose the next one from',
  'two to choose from become three',
  'the second colour comes twice each time',
  'a third colour comes in its place',
  'one missing becomes two',
  'the row ends inside the part that repeats',
  'the part that repeats becomes four long',
  'the empty places move into the row',
  'three to choose from become four',
  'colours become shapes in colours',
  'shape and colour repeat each in its own way',
  'two missing become three',
];

const ENGLISH: Words = {
  name: 'continue the row',
  about: 'Finds out what repeats in a row, and what belongs into its empty places.',
  steps: STEPS,
  parameters: PARAMETER_WORDS,
  say,
  show,
  help: () => [
    'Say the row aloud with a beat, and stop at the empty place.',
    'Lay a finger under the part that repeats, then under the next: they are the same.',
  ],
  easierNow: () =>
    'Say the row up to the empty place yourself, and let the child only say what comes there.',
  harderNow: () => 'Ask what would come after that, and how the child knows.',
  lookFor: () => [
    'Taking the same as the neighbour, or the first one again, may come from looking at two and not at the whole row.',
  ],
  describe,
  answer,
};

export const WORDS: Readonly<Record<Language, Words>> = { en: ENGLISH };

/** Such as "A B B", as it is read out. */
function spelled(unit: string): string {
  return [...unit].join(' ');
}

function say(printed: Printed): readonly string[] {
  const isAtEnd = printed.row.at(-1) === null;
  const question = isAtEnd ? 'What comes next?' : 'What is missing in the row?';
  return ['Look along the row from here to there.', question, deedSentence(printed)];
}

function deedSentence(printed: Printed): string {
  const isOne = emptyCount(printed) === 1;
  switch (responseTo(printed)) {
    case 'point':
      return isOne
        ? 'Point to the right one below.'
        : 'Point to the right ones below, one after the other.';
    case 'ring':
      return 'Draw a ring round the right one below.';
    case 'sticker':
      return isOne
        ? 'Put the right sticker on the empty circle.'
        : 'Put the right sticker on each empty circle.';
    case 'colour-in':
      return isOne ? 'Colour in the empty one.' : 'Colour in the empty ones.';
    case 'draw':
      return isOne ? 'Draw it in the empty place.' : 'Draw them in the empty places.';
  }
}

function show(printed: Printed): string {
  const read =
    'Say the row aloud together from its beginning, pointing to each, and go on saying it.';
  return responseTo(printed) === 'sticker'
    ? `${read} Lay out stickers of all colours of the row.`
    : read;
}

function describe({ row, offered = [] }: Printed): string {
  const places = row.map((figure) => (figure ? figureName(figure) : 'empty place'));
  const choices = offered.length > 0 ? ` To choose from: ${namesOf(offered).join(', ')}.` : '';
  return `A row: ${places.join(', ')}.${choices}`;
}

function answer(printed: Printed, key: unknown): string {
  const { figures } = answerSchema.parse(key);
  const isAtEnd = printed.row.at(-1) === null;
  return `${isAtEnd ? 'Next' : 'Missing'}: ${namesOf(figures).join(', ')}.`;
}

function namesOf(figures: readonly Figure[]): readonly string[] {
  return figures.map((figure) => figureName(figure));
}

function emptyCount({ row }: Printed): number {
  return row.filter((figure) => figure === null).length;
}
