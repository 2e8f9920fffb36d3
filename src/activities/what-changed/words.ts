// What what-changed says to the adult and, through the adult, to the child.
import type { Figure } from '../../figures/index.ts';
import type { Language } from '../../languages/index.ts';
import type { ActivityWords } from '../activity.ts';
import {
  CONTENT_PHRASES,
  capitalised,
  counted,
  listOf,
  nameAmong,
  numberWord,
  ordinalWord,
} from '../wording.ts';
import { answerSchema, type PARAMETERS, type Printed, type Response, type Scene } from './task.ts';

type Words = ActivityWords<typeof PARAMETERS, Printed>;

const PARAMETER_WORDS: Words['parameters'] = {
  content: {
    label: 'Look at',
    help: 'What the figures of a picture differ in, and what can change.',
    choices: CONTENT_PHRASES,
  },
  response: {
    label: 'The child',
    help: 'What the child does with each change, in the second picture.',
    choices: {
      point: 'points to it',
      ring: 'draws a ring round it',
      cross: 'crosses it out',
    },
  },
  kind: {
    label: 'What happens',
    help: 'What is different in the second picture. Changes of places are asked for by that name, so that nobody counts two places as one.',
    choices: {
      gone: 'figures go',
      added: 'figures come',
      first: 'figures change in the first thing to look at',
      any: 'figures change in any one thing to look at',
      mixed: 'figures change, go or come',
      swapped: 'two figures change places',
    },
  },
  figures: { label: 'Figures', help: 'How many figures the fuller picture has.' },
  changes: {
    label: 'Changes',
    help: 'How many places are different. The child is told the number.',
  },
  likeness: {
    label: 'How like they are',
    help: 'Whether a changed figure is quite unlike what it was, or rather like it, always far enough to be told apart.',
    choices: { far: 'quite unlike', near: 'rather like' },
  },
  layout: {
    label: 'Laid out',
    help: 'How the figures stand, the same in both pictures.',
    choices: { grid: 'in straight rows', loose: 'a little out of line' },
  },
};

const STEPS: readonly string[] = [
  'four figures in colours, of which one is gone',
  'one figure has become another',
  'four figures become six',
  'pointing becomes drawing a ring',
  'one change becomes two',
  'the figures stand a little out of line',
  'six figures become eight',
  'the colour may change instead of the shape',
  'changed figures are rather like what they were',
  'two changes become three',
  'the size may change as well',
  'eight figures become ten',
];

const ENGLISH: Words = {
  name: 'what has changed',
  about: 'Compares two pictures place by place and finds what is different in the second.',
  steps: STEPS,
  parameters: PARAMETER_WORDS,
  say: (printed) => ['Look at both pictures.', askedIn(printed), doingIn(printed)],
  show: () =>
    'Put one finger on a place in the first picture and one on the same place in the second, and ask: is it the same here and there? Go on like this from place to place; an empty place counts too.',
  help: () => [
    'Cover all but one row, the same in both pictures, and go on row by row.',
    'Say what is in a place of the first picture, and let the child say what is there in the second.',
  ],
  easierNow: () => 'Say in which row to look.',
  harderNow: () =>
    'Let the child look well at the first picture, cover it, and say from memory what is different.',
  lookFor: () => [
    'Naming things in the second picture alone may mean that the two are not compared place by place.',
    'An empty place is easily missed: ask what was there.',
  ],
  describe,
  answer,
};

export const WORDS: Readonly<Record<Language, Words>> = { en: ENGLISH };

function askedIn({ asked, told }: Printed): string {
  if (told === 'swaps') {
    const pairs = Math.round(asked / 2);
    const who = pairs === 1 ? 'two have' : `${numberWord(pairs)} pairs have`;
    return `In the second picture ${who} changed places.`;
  }
  return `The second picture is different in ${counted(asked, 'place', 'places')}.`;
}

const DOING: Readonly<Record<Response, readonly [one: string, several: string]>> = {
  point: ['Put your finger on it, in the second picture.', 'Put your finger on each of them.'],
  ring: ['Draw a ring round it, in the second picture.', 'Draw a ring round each of them.'],
  cross: ['Cross it out in the second picture.', 'Cross out each of them in the second picture.'],
};

function doingIn({ asked, response = 'point' }: Printed): string {
  return DOING[response][asked === 1 ? 0 : 1];
}

function describe(printed: Printed): string {
  const { first, second } = printed;
  const named = (scene: Scene) =>
    scene.map((figure) => nameIn(printed, figure) ?? 'an empty place').join(', ');
  return `The first picture, row by row: ${named(first)}. The second picture: ${named(second)}.`;
}

function answer(printed: Printed, key: unknown): string {
  const places = answerSchema.parse(key);
  const said = places.map((place) => {
    const before = nameIn(printed, printed.first[place]) ?? 'nothing';
    const after = nameIn(printed, printed.second[place]) ?? 'nothing';
    return `the ${ordinalWord(place)} (first ${before}, then ${after})`;
  });
  const count = capitalised(counted(places.length, 'place is', 'places are'));
  return `${count} different, counted along the rows: ${listOf(said)}.`;
}

/** The figure's name, with its size by rank where sizes differ. */
function nameIn({ first, second }: Printed, figure: Figure | null | undefined): string | undefined {
  if (!figure) return undefined;
  const all = [...first, ...second].filter((other) => other !== null);
  return nameAmong(all, figure);
}
