// What look-and-remember says to the adult and, through the adult, to the child.
import type { Figure } from '../../figures/index.ts';
import type { Language } from '../../languages/index.ts';
import type { ActivityWords } from '../activity.ts';
import { CONTENT_PHRASES, counted, listOf, nameAmong, ordinalWord } from '../wording.ts';
import { FOLD_GUIDE_SIZE, foldGuide } from './fold-guide.ts';
import { answerSchema, type PARAMETERS, type Printed, type Response } from './task.ts';

type Words = ActivityWords<typeof PARAMETERS, Printed>;

const PARAMETER_WORDS: Words['parameters'] = {
  content: {
    label: 'Look at',
    help: 'What the figures differ in. With two or three things together, all of them have to be kept in mind.',
    choices: CONTENT_PHRASES,
  },
  response: {
    label: 'The child',
    help: 'What the child does with those that it has seen before.',
    choices: {
      point: 'points to them',
      sticker: 'puts a sticker on each',
      ring: 'draws a ring round each',
      cross: 'crosses each',
    },
  },
  set: { label: 'To remember', help: 'How many figures are in the frame above the fold.' },
  again: {
    label: 'Come again',
    help: 'Whether all of them are among those below the fold, or only half of them.',
    choices: { all: 'all of them', some: 'half of them' },
  },
  choices: { label: 'To choose from', help: 'How many figures there are below the fold.' },
  nearMisses: {
    label: 'Nearly the same',
    help: 'How many of the new ones differ in one thing only from one that was seen. Where one thing alone is looked at, all do, and this number has no say.',
  },
  likeness: {
    label: 'How like they are',
    help: 'Whether colours, forms and the like are drawn far from each other or near, always far enough to be told apart.',
    choices: { far: 'far apart', near: 'near each other' },
  },
  layout: {
    label: 'Laid out',
    help: 'How the figures below the fold stand.',
    choices: { rows: 'in rows', loose: 'out of line' },
  },
};

const STEPS: readonly string[] = [
  'one figure is kept in mind and found among three',
  'three to choose from become four',
  'two figures are kept in mind',
  'pointing becomes drawing rings',
  'four to choose from become six',
  'one of the new ones differs in one thing only',
  'three figures are kept in mind',
  'a second new one differs in one thing only',
  'six to choose from become eight',
  'those to choose from do not stand in rows',
  'colours and shapes come nearer to each other',
  'four of the new ones differ in one thing only',
  'four figures are kept in mind',
];

const ENGLISH: Words = {
  name: 'look and remember',
  about: 'Looks closely, keeps in mind what is no longer there, and finds it again.',
  steps: STEPS,
  parameters: PARAMETER_WORDS,
  say,
  show,
  help: () => [
    'Cover all to choose from but one, and ask: did you see this? Then the next.',
    'Unfold for one more short look, and fold again.',
  ],
  easierNow: () => 'Let the child look twice as long, or cover some that were not in the frame.',
  harderNow: () =>
    'Let the child look for a shorter time, or sing a short song before the question.',
  lookFor: () => [
    'One that is alike in most things may be chosen: perhaps only a part of it was kept.',
    'If there are several, the first or the last may be kept and the others lost.',
  ],
  guide: () => ({
    words:
      'Fold the upper half back along the dashed line, from edge mark to edge mark, then turn the paper so that the child sees the lower half alone.',
    drawing: foldGuide(),
    ...FOLD_GUIDE_SIZE,
  }),
  describe,
  answer,
};

export const WORDS: Readonly<Record<Language, Words>> = { en: ENGLISH };

const DEEDS: Readonly<Record<Response, { one: string; several: string }>> = {
  point: { one: 'Put your finger on it.', several: 'Put your finger on each.' },
  sticker: { one: 'Put a sticker on it.', several: 'Put a sticker on each.' },
  ring: { one: 'Draw a ring round it.', several: 'Draw a ring round each.' },
  cross: { one: 'Draw a cross on it.', several: 'Draw a cross on each.' },
};

function say({ set, response = 'point' }: Printed): readonly string[] {
  const isOne = set.length === 1;
  return [
    isOne ? 'Look well at the one in the frame.' : 'Look well at all of them in the frame.',
    'Now I fold the paper.',
    isOne ? 'Which one did you see?' : 'Which ones did you see?',
    DEEDS[response][isOne ? 'one' : 'several'],
  ];
}

/** Seconds to look: three for each figure, and not less than five; common practice, no source. */
const SECONDS_EACH = 3;
const FEWEST_SECONDS = 5;

function show({ set }: Printed): string {
  const seconds = Math.max(FEWEST_SECONDS, SECONDS_EACH * set.length);
  return `Keep the part below the dashed line covered while the child looks for about ${seconds} seconds, and name together what is there; then fold the upper part to the back. When all is done, unfold and compare.`;
}

/** Both halves, as they are printed: what has to be found is not said. */
function describe(printed: Printed): string {
  return `In the frame: ${namesIn(printed, printed.set)}. Below the fold: ${namesIn(printed, printed.choices)}.`;
}

function answer(printed: Printed, key: unknown): string {
  const places = answerSchema.parse(key);
  const found = places.map((place) => {
    const figure = printed.choices[place];
    return `the ${ordinalWord(place)}${figure ? `, ${nameIn(printed, figure)}` : ''}`;
  });
  const start = counted(places.length, 'was', 'were');
  return `Counted along the rows, ${start} in the frame: ${found.join('; ')}.`;
}

function namesIn(printed: Printed, figures: readonly Figure[]): string {
  return listOf(figures.map((figure) => nameIn(printed, figure)));
}

function nameIn({ set, choices }: Printed, figure: Figure): string {
  return nameAmong([...set, ...choices], figure);
}
