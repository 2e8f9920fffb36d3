// What tangle says to the adult and, through the adult, to the child.
import { figureName } from '../../figures/index.ts';
import type { Language } from '../../languages/index.ts';
import type { ActivityWords } from '../activity.ts';
import { CONTENT_PHRASES, capitalised, counted, listOf } from '../wording.ts';
import { answerSchema, CONTENTS, type PARAMETERS, type Printed, type Response } from './task.ts';

type Words = ActivityWords<typeof PARAMETERS, Printed>;

const PARAMETER_WORDS: Words['parameters'] = {
  content: {
    label: 'Look at',
    help: 'Which outlines lie over one another. Of letters and numerals only a few have lines that are not found in each other.',
    choices: Object.fromEntries(
      CONTENTS.map((content) => [content, CONTENT_PHRASES[content] ?? content]),
    ),
  },
  response: {
    label: 'The child',
    help: 'What the child does with those below that are in the tangle.',
    choices: {
      point: 'points to them',
      ring: 'draws rings round them',
      'colour-in': 'colours them in',
    },
  },
  shown: { label: 'In the tangle', help: 'How many outlines lie over one another.' },
  absent: {
    label: 'Not in the tangle',
    help: 'How many of those to choose from are not there, not even made up of parts of others.',
  },
  overlap: {
    label: 'How close',
    help: 'How far the outlines lie over one another. All lines can be seen.',
    choices: {
      little: 'a little over one another',
      half: 'half over one another',
      much: 'much over one another',
    },
  },
};

const STEPS: readonly string[] = [
  'two shapes lie a little over one another, and one of three is not there',
  'two of those to choose from are not there',
  'the shapes lie half over one another',
  'two shapes in the tangle become three',
  'pointing becomes drawing rings',
  'three of those to choose from are not there',
  'the shapes lie much over one another',
  'three shapes in the tangle become four',
  'four of those to choose from are not there',
  'four shapes in the tangle become five',
  'five shapes in the tangle become six',
];

const DOING: Readonly<Record<Response, string>> = {
  point: 'Put your finger on each one that you find.',
  ring: 'Draw a ring round each one that you find.',
  'colour-in': 'Colour in each one that you find.',
};

const ENGLISH: Words = {
  name: 'tangle',
  about: 'Sees each outline for itself where several lie over one another.',
  steps: STEPS,
  parameters: PARAMETER_WORDS,
  say: ({ response = 'point' }) => [
    'Look at the tangle of lines.',
    'Which of those below are in it, just as big?',
    DOING[response],
  ],
  show: () =>
    'Take the first one below, go round it with a finger, and then look for the same line in the tangle and go round it there. Say also of one that is not there: I cannot find it.',
  help: () => ['Go slowly round one outline in the tangle, and ask which of those below it is.'],
  easierNow: () => 'Draw over each outline of the tangle in a colour of its own.',
  harderNow: () => 'Ask how many are in the tangle before you look at those below.',
  lookFor: () => [
    'Saying yes to one that is not there may come from pieces of other lines that look like it.',
    'Turning off where lines cross makes shapes that are not there: go on along the same line.',
  ],
  describe: ({ tangle, candidates }) => {
    const names = candidates.map((figure, place) => `${place + 1} ${figureName(figure)}`);
    const lie = `${capitalised(counted(tangle.length, 'outline', 'outlines'))} lie over one another`;
    return `${lie}. To choose from: ${names.join('; ')}.`;
  },
  answer: ({ candidates }, key) => {
    const names = answerSchema.parse(key).flatMap((place) => {
      const figure = candidates[place];
      return figure ? [figureName(figure)] : [];
    });
    return `In the tangle: ${listOf(names)}.`;
  },
};

export const WORDS: Readonly<Record<Language, Words>> = { en: ENGLISH };
