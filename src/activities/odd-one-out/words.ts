// What odd-one-out says to the adult and, through the adult, to the child.
import {
  type Figure,
  formOf,
  isLetter,
  isNumeral,
  isOwnColoured,
  isPicture,
} from '../../figures/index.ts';
import type { Language } from '../../languages/index.ts';
import type { ActivityWords } from '../activity.ts';
import { CONTENT_PHRASES, capitalised, nameAmong, numberWord } from '../wording.ts';
import { aloneIn, changingTraits, type Trait } from './solve-looks.ts';
import { answerSchema, type PARAMETERS, type Printed, type Response } from './task.ts';

type Words = ActivityWords<typeof PARAMETERS, Printed>;

const STEPS: readonly string[] = [
  'three in a row, one of another colour',
  'three in a row become four',
  'the odd one looks more like the others',
  'colours become shapes',
  'four in a row become five',
  'pointing becomes drawing a ring',
  'five in a row become six',
  'colours change too and mean nothing',
  'the row becomes loose',
  'six become seven',
  'the ring becomes crossing out',
  'shape, colour or size may be odd, the others change',
  'the pictures all differ, and one is of another kind',
];

const PARAMETER_WORDS: Words['parameters'] = {
  content: {
    label: 'Look at',
    help: 'What the figures are, and what one of them is odd in.',
    choices: {
      ...CONTENT_PHRASES,
      'picture-kinds': 'pictures of one kind',
    },
  },
  response: {
    label: 'The child',
    help: 'What the child does with the odd one, the easiest for the hand first.',
    choices: {
      point: 'points and tells',
      sticker: 'puts a sticker',
      ring: 'draws a ring',
      cross: 'crosses it out',
    },
  },
  figures: { label: 'Figures', help: 'How many there are to compare, the odd one among them.' },
  odd: {
    label: 'Odd in',
    help: 'What the odd one alone has, where more than one thing could be odd.',
    choices: {
      any: 'any of them',
      colour: 'colour',
      form: 'shape',
      size: 'size',
      turn: 'direction',
      count: 'number',
      fill: 'texture',
    },
  },
  vary: {
    label: 'Something else changes too',
    help: 'The others differ too, but each of them has its like. It is to be looked past. From five figures on; pictures of one kind always differ.',
  },
  likeness: {
    label: 'The odd one looks',
    help: 'How different the odd one is. What is nearly like is still far enough apart to be fair.',
    choices: { far: 'quite different', near: 'nearly like the others' },
  },
  layout: {
    label: 'Laid out',
    help: 'How the figures stand.',
    choices: { row: 'in a row', grid: 'in two rows', loose: 'loosely' },
  },
  mirrors: {
    label: 'Left and right',
    help: 'What points, points left and right, or slants like in a mirror. Very hard: children of four do not find the odd one yet. On no step.',
  },
};

const DOING: Readonly<Record<Response, string>> = {
  point: 'Put your finger on it.',
  sticker: 'Put a sticker on it.',
  ring: 'Draw a ring round it.',
  cross: 'Cross it out.',
};

const ENGLISH: Words = {
  name: 'odd one out',
  about: 'Compares figures with each other and finds the one that does not belong.',
  steps: STEPS,
  parameters: PARAMETER_WORDS,
  say,
  show: ({ figures }) =>
    changingTraits(figures).length > 1 && isOfLooks(figures)
      ? 'Point to two that are alike in everything and say “these two are the same”. Go on until one is left that has no other like it.'
      : 'Point to one after the other and say what it is. Stop at the one of which there is no other, and ask why it does not belong.',
  help: () => [
    'Point to one and ask: is there another that goes with it? Go on until one has none.',
  ],
  easierNow: () => 'Cover some, so that two that go together and the odd one are left.',
  harderNow: () => 'Ask what would have to change so that the odd one belongs.',
  lookFor: () => [
    'A favourite, or the last in the row, may be chosen without comparing.',
    'If several things change, one that merely stands out may be taken for the odd one.',
  ],
  describe,
  answer,
};

export const WORDS: Readonly<Record<Language, Words>> = { en: ENGLISH };

function say({ figures, response = 'point' }: Printed): readonly string[] {
  return [
    'Which one does not belong?',
    isOfLooks(figures)
      ? 'Look at all of them: only one has no other like it.'
      : 'Look at all of them: only one is something else than all the others.',
    DOING[response],
  ];
}

/** Whether some figures look alike; else they are of one kind but for one. */
function isOfLooks(figures: readonly Figure[]): boolean {
  return new Set(figures.map((figure) => JSON.stringify(figure))).size < figures.length;
}

function describe({ figures, columns = figures.length }: Printed): string {
  const names = figures.map((figure) => nameAmong(figures, figure));
  const rows = columns < figures.length ? 'in rows' : 'in a row';
  return `${capitalised(numberWord(figures.length))} ${rows}: ${names.join(', ')}.`;
}

function answer({ figures }: Printed, key: unknown): string {
  const { odd } = answerSchema.parse(key);
  const figure = figures[odd];
  if (!figure) return 'None does not belong.';
  const traits = changingTraits(figures).filter((trait) => aloneIn(figures, [trait]).includes(odd));
  const traitName = traits.map((trait) => traitWord(figure, trait)).find((name) => name !== '');
  const reason =
    traitName === undefined ? 'it has no other like it' : `there is no other of this ${traitName}`;
  const name = nameAmong(figures, figure);
  const why = traits.includes('kind') && !isOfLooks(figures) ? 'it is of another kind' : reason;
  return `Number ${odd + 1}, the ${name}, does not belong: ${why}.`;
}

/** What a child calls the trait; empty where it has no plain name. */
function traitWord(figure: Figure, trait: Trait): string {
  const form = formOf(figure);
  switch (trait) {
    case 'form':
      if (isPicture(form)) return 'picture';
      if (isNumeral(form)) return 'number';
      return isLetter(form) ? 'letter' : 'shape';
    case 'turn':
      return 'direction';
    case 'count':
      return 'number of dots';
    case 'fill':
      return 'texture';
    case 'colour':
      return isOwnColoured(figure) ? '' : 'colour';
    default:
      return trait === 'size' ? 'size' : '';
  }
}
