// What same-or-different says to the adult and, through the adult, to the child.
import { differencesOf } from '../../figures/index.ts';
import type { Language } from '../../languages/index.ts';
import type { ActivityWords } from '../activity.ts';
import { CONTENT_PHRASES, capitalised, listOf, nameAmong, numberWord } from '../wording.ts';
import { answerSchema, type PARAMETERS, type Pair, type Printed, type Response } from './task.ts';

type Words = ActivityWords<typeof PARAMETERS, Printed>;

const PARAMETER_WORDS: Words['parameters'] = {
  content: {
    label: 'Look at',
    help: 'What the two of a pair may differ in.',
    choices: CONTENT_PHRASES,
  },
  response: {
    label: 'The child',
    help: 'What the child does to tell the pairs that are the same from those that are not.',
    choices: {
      point: 'points to the pairs that are the same',
      dot: 'puts a dot beside the pairs that are the same',
      ring: 'draws a ring round the pairs that are the same',
      cross: 'crosses out the pairs that are not the same',
      signs: 'puts a dot for the same, a line for not the same',
    },
  },
  pairs: { label: 'Pairs', help: 'How many pairs there are, each in a box of its own.' },
  checked: {
    label: 'Things to check',
    help: 'In how many things a pair may differ, counted in the order in which they are named. Each pair differs in one of them, or in none. Where there is less to differ in, all of it counts.',
  },
  likeness: {
    label: 'How like they are',
    help: 'How easily the two of a pair that differ are taken for each other. Each is fair for three, four or five years and up.',
    choices: {
      far: 'plainly different, from three',
      middle: 'different, from four',
      near: 'nearly the same, from five',
    },
  },
  idle: {
    label: 'Every pair looks other',
    help: 'What never differs within a pair changes from pair to pair, and has to be left out of mind. Where there is nothing to change, it makes no difference.',
  },
  mirrors: {
    label: 'Mirror images',
    help: 'Whether pairs that differ in direction are mirror images of each other. Very hard: side by side, children of four to six do no better than by guessing. Only with directions.',
    choices: {
      none: 'none',
      'left-right': 'pointing left and right',
      slanted: 'slanted both ways',
    },
  },
};

const STEPS: readonly string[] = [
  'one of two pairs is the same, and only shapes differ',
  'two pairs become three',
  'pointing becomes putting a dot beside a pair',
  'three pairs become four',
  'every pair has another colour, which says nothing',
  'a pair may differ in its colours as well',
  'shapes and colours come nearer to each other',
  'a dot becomes a ring round the pair',
  'four pairs become five',
  'every pair has another size, which says nothing',
  'five pairs become six',
  'a pair may differ in its sizes as well',
  'the two of a pair come still nearer to each other',
  'six pairs become eight',
];

const DOING: Readonly<Record<Response, string>> = {
  point: 'Point to every box where the two are just the same.',
  dot: 'Where the two are just the same, put a dot in the little circle.',
  ring: 'Draw a ring round every box where the two are just the same.',
  cross: 'Cross out every box where the two are not the same.',
  signs: 'Put a dot in the little circle for the same, and a line for not the same.',
};

const ENGLISH: Words = {
  name: 'same or different',
  about: 'Compares the two figures of each pair and tells whether they are just the same.',
  steps: STEPS,
  parameters: PARAMETER_WORDS,
  say: ({ response = 'point' }) => [
    'There are two in every box.',
    'Look at one box at a time: are these two the same?',
    DOING[response],
  ],
  show: () =>
    'Cover all boxes but one. Point to one of the two, then to the other, and ask: is everything the same? Where it is not, say together what is different.',
  help: () => [
    'Cover all boxes but one.',
    'Name one of the two, then the other, one thing at a time: is this the same, and this?',
  ],
  easierNow: () => 'Do one row of boxes today, and cover the rest.',
  harderNow: () => 'Ask what would have to change so that two that differ become the same.',
  lookFor: () => [
    'Calling all pairs the same may come from looking at one of the two only.',
    'If two that are the same are called different, show once more what “the same” means.',
  ],
  describe,
  answer,
};

export const WORDS: Readonly<Record<Language, Words>> = { en: ENGLISH };

function describe({ pairs }: Printed): string {
  const boxes = pairs.map(
    (pair, place) => `box ${place + 1}, ${namesOf(pairs, pair).join(' and ')}`,
  );
  return `${capitalised(numberWord(pairs.length))} boxes with two figures each: ${boxes.join('; ')}.`;
}

function answer({ pairs }: Printed, key: unknown): string {
  const same = answerSchema.parse(key);
  const places = pairs.map((_, place) => place);
  const numbers = (wanted: readonly number[]) =>
    `${wanted.length === 1 ? 'box' : 'boxes'} ${listOf(wanted.map((place) => String(place + 1)))}`;
  const others = places
    .filter((place) => !same.includes(place))
    .map((place) => {
      const pair = pairs[place];
      return `${place + 1} (${pair ? reasonIn(pair) : ''})`;
    });
  const rest =
    others.length === 0
      ? ''
      : ` They are not in ${others.length === 1 ? 'box' : 'boxes'} ${listOf(others)}.`;
  return `Counted along the rows, the two are the same in ${numbers(same)}.${rest}`;
}

function namesOf(pairs: readonly Pair[], pair: Pair): readonly string[] {
  return pair.map((figure) => nameAmong(pairs.flat(), figure));
}

/** In what the two of a pair differ, as an adult would say it. */
function reasonIn([one, other]: Pair): string {
  const found = differencesOf(one, other);
  if (found.turnedOutlineShare !== undefined) return 'another form';
  if (found.countRatio !== undefined) return 'another number';
  if (found.colourDe00 !== undefined) return 'another colour';
  if (found.fill) return 'another texture';
  if (found.turnDeg !== undefined) return 'another direction';
  return found.sizeRatio === undefined ? 'not quite the same' : 'another size';
}
