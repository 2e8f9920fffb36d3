// What find-the-same says to the adult and, through the adult, to the child.
import type { Figure } from '../../figures/index.ts';
import type { Language } from '../../languages/index.ts';
import type { ActivityWords } from '../activity.ts';
import { CONTENT_PHRASES, nameAmong, ordinalWord } from '../wording.ts';
import { answerSchema, type PARAMETERS, type Printed, type Response } from './task.ts';

type Words = ActivityWords<typeof PARAMETERS, Printed>;

const PARAMETER_WORDS: Words['parameters'] = {
  content: {
    label: 'Look at',
    help: 'What the figures differ in. Two or three things together need all of them to be seen.',
    choices: CONTENT_PHRASES,
  },
  response: {
    label: 'The child',
    help: 'What the child does with the one that is the same.',
    choices: {
      point: 'points to it',
      ring: 'draws a ring round it',
      join: 'draws a line to it from the frame',
    },
  },
  choices: { label: 'To choose from', help: 'How many figures there are to choose from.' },
  mixed: {
    label: 'Wrong ones differ',
    help: 'No two of the wrong ones are alike. If not, they are all alike, and the right one stands alone among them, which is easy.',
  },
  nearMisses: {
    label: 'Nearly the same',
    help: 'How many of the wrong ones differ from the model in one thing only. The others differ in two or three. Where one thing alone is looked at, all differ in that one, and this number has no say.',
  },
  likeness: {
    label: 'How like they are',
    help: 'Whether colours, forms and the like are drawn far from each other or near, always far enough to be told apart. Where there is little to draw from, it makes little difference.',
    choices: { far: 'far apart', near: 'near each other' },
  },
  mirrors: {
    label: 'Mirror images',
    help: 'Whether one of the wrong ones is the mirror image of the model. Very hard: side by side, children of four to six do no better than by guessing. Only with directions.',
    choices: {
      none: 'none',
      'left-right': 'pointing left and right',
      slanted: 'slanted both ways',
    },
  },
  layout: {
    label: 'Laid out',
    help: 'How the figures to choose from stand.',
    choices: { row: 'in one row', grid: 'in two rows from four up' },
  },
};

const STEPS: readonly string[] = [
  'one of three shapes is the same, the two others are alike',
  'the wrong ones differ from each other',
  'three to choose from become four',
  'pointing becomes drawing a ring',
  'four to choose from become five',
  'one of the wrong ones differs in one thing only',
  'a second one differs in one thing only',
  'colours and shapes come nearer to each other',
  'five to choose from become six',
  'a third one differs in one thing only',
  'the size counts as well',
  'six to choose from become eight',
  'five of the wrong ones differ in one thing only',
  'all of the wrong ones differ in one thing only',
];

const DOING: Readonly<Record<Response, string>> = {
  point: 'Put your finger on it.',
  ring: 'Draw a ring round it.',
  join: 'Draw a line to it from the frame.',
};

const ENGLISH: Words = {
  name: 'find the same',
  about: 'Looks closely at one figure and finds the only other that is just like it.',
  steps: STEPS,
  parameters: PARAMETER_WORDS,
  say: ({ response = 'point' }) => [
    'Look at the one in the frame.',
    'Which of the others is just like it?',
    DOING[response],
  ],
  show: () =>
    'Point to the one in the frame, then to each of the others in turn, and ask each time: are these two the same in everything? Where they are not, say together what is different.',
  help: () => [
    'Cover all others but one: is it just like the one in the frame? Then the next.',
    'Say one thing at a time: this is the same, and this.',
  ],
  easierNow: () => 'Cover half of those to choose from, with the right one among those left.',
  harderNow: () => 'Ask of each wrong one what is different about it.',
  lookFor: () => [
    'One that is alike in most things may be chosen at a quick first look.',
    'Some children take the first that seems right and do not look at the rest.',
  ],
  describe,
  answer,
};

export const WORDS: Readonly<Record<Language, Words>> = { en: ENGLISH };

function describe(printed: Printed): string {
  const { model, choices } = printed;
  const names = choices.map((figure, place) => `${place + 1} ${nameIn(printed, figure)}`);
  return `In the frame: ${nameIn(printed, model)}. To choose from: ${names.join('; ')}.`;
}

function answer(printed: Printed, key: unknown): string {
  const place = answerSchema.parse(key);
  const figure = printed.choices[place];
  const name = figure ? `, the ${nameIn(printed, figure)},` : '';
  return `Counted along the rows, the ${ordinalWord(place)}${name} is the same as the one in the frame.`;
}

function nameIn({ model, choices }: Printed, figure: Figure): string {
  return nameAmong([model, ...choices], figure);
}
