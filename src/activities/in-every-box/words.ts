// What in-every-box says to the adult and, through the adult, to the child.
import type { Language } from '../../languages/index.ts';
import type { ActivityWords } from '../activity.ts';
import { CONTENT_PHRASES, capitalised, counted, listOf, numberWord } from '../wording.ts';
import { countedNoun, itemName, lookOf, severalAttributes } from './naming.ts';
import { solve } from './solve.ts';
import { answerSchema, type PARAMETERS, type Printed } from './task.ts';

type Words = ActivityWords<typeof PARAMETERS, Printed>;

const PARAMETER_WORDS: Words['parameters'] = {
  content: {
    label: 'Look at',
    help: 'What the boxes hold, and what the child compares. Of two or three things together all must be the same.',
    choices: CONTENT_PHRASES,
  },
  response: {
    label: 'The child',
    help: 'What the child does with the answer. Stickers go with colours only.',
    choices: { point: 'points and tells', ring: 'draws a ring', sticker: 'puts a sticker' },
  },
  boxes: { label: 'Boxes', help: 'How many boxes there are to compare.' },
  figures: { label: 'In each box', help: 'How many stand in each box.' },
  shared: { label: 'In every box', help: 'How many of them stand in every box.' },
  nearMisses: {
    label: 'Nearly in every box',
    help: 'How many stand in all boxes but one. They are easily taken for the answer.',
  },
  layout: {
    label: 'Laid out',
    help: 'How they stand inside a box.',
    choices: { row: 'in a row', grid: 'close together', loose: 'loosely' },
  },
  stickerMm: {
    label: 'Dot size',
    help: 'How wide coloured dots are. Choose the size of your stickers. Other pictures keep their own size.',
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
  'two in each of three boxes, one of them in every box',
  'two in a box become three',
  'one more is missing from a single box only',
  'three boxes become four',
  'one in every box becomes two',
  'three in a box become four',
  'pointing becomes drawing a ring',
  'four boxes become five',
  'four in a box become five',
  'a second one is missing from a single box only',
  'two in every box become three',
  'five boxes become six',
  'groups become loose',
  'five in a box become six',
  'a third one is missing from a single box only',
];

const ENGLISH: Words = {
  name: 'in every box',
  about: 'Looks into several boxes and finds what is the same in all of them.',
  steps: STEPS,
  parameters: PARAMETER_WORDS,
  say,
  show,
  help: () => ['Cover all boxes but two: what is in both? Then uncover one more and look again.'],
  easierNow: () =>
    'Use two boxes only, and ask what is in both; there may be more than in all of them.',
  harderNow: () => 'Ask which ones are in all boxes but one, and where they are missing.',
  lookFor: () => [
    'Something that is in two boxes only may be chosen because the child stopped looking there.',
    'Going back and forth between the boxes is good searching.',
  ],
  describe,
  answer,
};

export const WORDS: Readonly<Record<Language, Words>> = { en: ENGLISH };

function say(printed: Printed): readonly string[] {
  const count = sharedCount(printed);
  const look = lookOf(printed);
  const verb = count === 1 ? 'is' : 'are';
  return [
    `Which ${countedNoun(look, count)} ${verb} in every box?`,
    'Look into one box after the other.',
    ...bothSentence(printed),
    responseSentence(printed, count),
  ];
}

/** Said where one attribute alone would mislead. */
function bothSentence(printed: Printed): readonly string[] {
  const attributes = severalAttributes(printed);
  return attributes === undefined ? [] : [`The same means the same ${attributes}.`];
}

function responseSentence({ response = 'point' }: Printed, count: number): string {
  const it = count === 1 ? 'it' : 'them';
  switch (response) {
    case 'point':
      return `Put your finger on ${it} in each box.`;
    case 'ring':
      return `Draw a ring round ${it} in each box.`;
    case 'sticker':
      return count === 1
        ? 'Put a sticker of that colour on the empty circle.'
        : 'Put a sticker of each of these colours on the empty circles.';
  }
}

function show(printed: Printed): string {
  const one = countedNoun(lookOf(printed), 1);
  const look = `Point to one ${one} in the first box and look for it in each of the other boxes. If it is missing from one, try the next ${one}.`;
  return printed.response === 'sticker'
    ? `${look} Lay out stickers of other colours too, so that the child has a choice.`
    : look;
}

function describe(printed: Printed): string {
  const look = lookOf(printed);
  const boxes = printed.boxes.map(
    ({ figures }, index) =>
      `Box ${index + 1}: ${listOf(figures.map((figure) => itemName(figure, look, printed)))}.`,
  );
  const number = printed.boxes.length;
  return [`${capitalised(counted(number, 'box', 'boxes'))}.`, ...boxes].join(' ');
}

function answer(printed: Printed, key: unknown): string {
  const { figures } = answerSchema.parse(key);
  const look = lookOf(printed);
  const names = listOf(figures.map((figure) => itemName(figure, look, printed)));
  const number = printed.boxes.length;
  const where = number === 2 ? 'in both boxes' : `in all ${numberWord(number)} boxes`;
  return `${capitalised(names)} ${figures.length === 1 ? 'is' : 'are'} ${where}.`;
}

/** How many figures to look for, which the child is told; 1 where the page admits no answer. */
function sharedCount(printed: Printed): number {
  return solve(printed).answers[0]?.figures.length ?? 1;
}
