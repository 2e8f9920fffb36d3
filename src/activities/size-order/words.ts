// What size-order says to the adult and, through the adult, to the child.
import { contentName, type Figure, figureName, formName, formOf } from '../../figures/index.ts';
import type { Language } from '../../languages/index.ts';
import type { ActivityWords } from '../activity.ts';
import { capitalised, listOf, numberWord, ordinalWord } from '../wording.ts';
import {
  type Answer,
  type Asked,
  answerSchema,
  CONTENTS,
  type PARAMETERS,
  type Printed,
} from './task.ts';

type Words = ActivityWords<typeof PARAMETERS, Printed>;

const PARAMETER_WORDS: Words['parameters'] = {
  content: {
    label: 'Look at',
    help: 'What comes in sizes. Of letters, numerals, signs and pictures one is printed in several sizes. With dots the number counts and not the size. Colours and shapes that differ as well say nothing of the order.',
    choices: Object.fromEntries(CONTENTS.map((content) => [content, contentName(content)])),
  },
  response: {
    label: 'The child',
    help: 'What the child does. A ring is for one figure alone; dots, lines and scissors are for the whole order. Children cut out only with an adult beside them.',
    choices: {
      point: 'points',
      ring: 'draws a ring round it',
      dots: 'numbers them with one dot, two dots and so on',
      join: 'draws lines to a row of places that grow',
      cut: 'cuts them out and sticks them in order',
    },
  },
  asked: {
    label: 'What to find',
    help: 'One of them, or the whole order from the smallest to the biggest. For the one between, there are three or five.',
    choices: {
      biggest: 'the biggest',
      smallest: 'the smallest',
      middle: 'the one between',
      order: 'all in order',
    },
  },
  figures: { label: 'Figures', help: 'How many there are.' },
  difference: {
    label: 'How far apart',
    help: 'How much bigger each is than the next smaller one: always enough to be seen. The more there are, the less room there is for wide differences.',
    choices: { wide: 'wide', plain: 'plain', fine: 'fine' },
  },
  layout: {
    label: 'Laid out',
    help: 'On one line heights can be compared at a glance; higher and lower they cannot. Cards to cut out and cards with dots have no ground line.',
    choices: { ground: 'on one line', loose: 'higher and lower' },
  },
};

const STEPS: readonly string[] = [
  'the biggest of three is found',
  'three become four',
  'sizes come nearer to each other',
  'colours differ as well and say nothing',
  'all are brought into order, not the biggest alone',
  'pointing becomes drawing lines to a row of places',
  'the figures leave their ground line',
  'four become five',
  'sizes come as near to each other as is fair',
  'shapes differ as well and say nothing',
];

const ENGLISH: Words = {
  name: 'smallest to biggest',
  about: 'Compares sizes, or how many dots there are, and finds the order they belong in.',
  steps: STEPS,
  parameters: PARAMETER_WORDS,
  say,
  show,
  help: (printed) =>
    isOfDots(printed)
      ? [
          'Cover all but two, and ask which has more.',
          'Touch one dot here and one dot there together, until one card has none left.',
        ]
      : [
          'Cover all but two, and ask which is bigger.',
          'Mark the height of one on a strip of paper, and hold the strip against the next.',
        ],
  easierNow: ({ asked = 'order' }) =>
    asked === 'order'
      ? 'Cover one or two in between, and let the child only point to the others in order.'
      : 'Cover those that come nearest to the one you ask for.',
  harderNow: ({ asked = 'order' }) =>
    asked === 'order'
      ? 'Ask for the order the other way round as well.'
      : 'Ask which one comes next, and which after that.',
  lookFor: (printed) => [
    isOfDots(printed)
      ? 'Dots that lie far apart may be taken for more.'
      : 'The brightest, or the one nearest to hand, may be taken for the biggest.',
    (printed.asked ?? 'order') === 'order'
      ? 'If only neighbours are in order, look together for the first of all that are left.'
      : 'The first that seems right may be taken before all were compared.',
  ],
  describe,
  answer,
};

export const WORDS: Readonly<Record<Language, Words>> = { en: ENGLISH };

/** The one that is asked for, as it is called among sizes and among numbers. */
const ASKED: Readonly<Record<Exclude<Asked, 'order'>, { size: string; dots: string }>> = {
  biggest: { size: 'the biggest', dots: 'the one with the most dots' },
  smallest: { size: 'the smallest', dots: 'the one with the fewest dots' },
  middle: { size: 'the one between in size', dots: 'the one between in number' },
};

function isOfDots({ figures }: Printed): boolean {
  return figures.some((figure) => formOf(figure) === 'dots');
}

function say(printed: Printed): readonly string[] {
  const { asked = 'order', figures, response } = printed;
  if (asked !== 'order') {
    const question = questionFor(asked, (figures.length - 1) / 2, isOfDots(printed));
    return [question, response === 'ring' ? 'Draw a ring round it.' : 'Put your finger on it.'];
  }
  return orderSentences(printed);
}

function questionFor(asked: Exclude<Asked, 'order'>, half: number, areDots: boolean): string {
  if (asked !== 'middle') {
    const which = asked === 'biggest' ? ['biggest', 'most'] : ['smallest', 'fewest'];
    return areDots ? `Which card has the ${which[1]} dots?` : `Which is the ${which[0]}?`;
  }
  const count = numberWord(half);
  if (areDots) return `Which card has more dots than ${count} and fewer than ${count}?`;
  return half === 1
    ? 'Which is bigger than one and smaller than the other?'
    : `Which is bigger than ${count} of them and smaller than ${count} of them?`;
}

function orderSentences(printed: Printed): readonly string[] {
  const areDots = isOfDots(printed);
  const [least, most] = areDots ? ['the fewest dots', 'the most'] : ['the smallest', 'the biggest'];
  switch (printed.response ?? 'point') {
    case 'dots':
      return [
        `Put one dot in the box under ${areDots ? 'the card with ' : ''}${least}.`,
        'Put two dots under the next, then three, and so on.',
      ];
    case 'join':
      return [
        `Find ${least} and draw a line from ${areDots ? 'them' : 'it'} to the smallest box.`,
        `Go on from box to box, up to ${most}.`,
      ];
    case 'cut':
      return ['Cut them all out.', `Stick them in the frame, from ${least} to ${most}.`];
    default:
      return [`Point to them one after the other, from ${least} to ${most}.`];
  }
}

function show(printed: Printed): string {
  const { asked = 'order' } = printed;
  const way = isOfDots(printed)
    ? 'Look at two cards at a time and ask which has more dots; let the child tell at a glance or count, as it likes.'
    : 'Look at two at a time and ask which is bigger; lay a finger across from the top of one to the other.';
  return asked === 'order'
    ? `${way} Find the first together, cover it, and look for the first of those that are left.`
    : way;
}

/** Says what there is, and of sizes and numbers only that they differ. */
function describe(printed: Printed): string {
  const { figures } = printed;
  const count = numberWord(figures.length);
  if (isOfDots(printed)) return `${capitalised(count)} cards, each with another number of dots.`;
  const names = figures.map(nameOf);
  const isOneName = names.every((name) => name === names[0]);
  const what = isOneName ? `${count} times ${formName(formOf(figures[0] ?? {}))}` : listOf(names);
  return `From left to right, each in another size: ${what}.`;
}

function nameOf({ size: _size, ...rest }: Figure): string {
  return figureName(rest);
}

function answer(printed: Printed, key: unknown): string {
  const places: Answer = answerSchema.parse(key);
  const words = places.map((place) => `the ${ordinalWord(place)}`);
  const { asked = 'order' } = printed;
  const areDots = isOfDots(printed);
  if (asked === 'order') {
    const way = areDots ? 'From the fewest dots to the most' : 'From the smallest to the biggest';
    return `${way}, counted from the left: ${listOf(words)}.`;
  }
  const which = capitalised(ASKED[asked][areDots ? 'dots' : 'size']);
  return `${which} is ${words[0] ?? ''} from the left.`;
}
