// What turned-shapes says to the adult and, through the adult, to the child.
import { contentName, formOf, stanceOf, symmetryTurnDeg } from '../../figures/index.ts';
import type { Language } from '../../languages/index.ts';
import type { ActivityWords } from '../activity.ts';
import { listOf, nameAmong, numberWord, ordinalWord } from '../wording.ts';
import { answerSchema, CONTENTS, type PARAMETERS, type Printed, type Response } from './task.ts';

type Words = ActivityWords<typeof PARAMETERS, Printed>;

const PARAMETER_WORDS: Words['parameters'] = {
  content: {
    label: 'Look at',
    help: 'What is turned or resized. Letters and numerals are turned only where that makes no other one of them.',
    choices: Object.fromEntries(CONTENTS.map((content) => [content, contentName(content)])),
  },
  response: {
    label: 'The child',
    help: 'What the child does with those of the same shape.',
    choices: { point: 'points to it', ring: 'draws a ring round it', cross: 'draws a cross on it' },
  },
  choices: { label: 'To choose from', help: 'How many figures there are to choose from.' },
  matches: { label: 'To find', help: 'How many of them have the shape of the one in the frame.' },
  turn: {
    label: 'Turned',
    help: 'By how much the right ones are turned. Slants are hard before five; only shapes and signs can lie at a slant.',
    choices: {
      none: 'not at all',
      quarter: 'a quarter turn',
      half: 'upside down',
      eighth: 'at a slant',
    },
  },
  resize: {
    label: 'Size',
    help: 'How large the right ones are against the one in the frame.',
    choices: {
      none: 'the same',
      bigger: 'bigger',
      smaller: 'smaller',
      both: 'some bigger, some smaller',
    },
  },
  mixed: {
    label: 'Wrong ones differ',
    help: 'No two of the wrong ones have one shape. If not, all have the same, which is easy.',
  },
  likeness: {
    label: 'How like they are',
    help: 'Whether the other shapes are far from the one in the frame or near it, always far enough to be told apart at every turn.',
    choices: { far: 'far apart', near: 'near each other' },
  },
  colours: {
    label: 'Colours',
    help: 'Colour says nothing here. With several colours the right one never has that of the one in the frame, and it must be left out of mind.',
    choices: {
      one: 'one for all',
      mixed: 'several',
      lure: 'several, and a wrong one has the colour of the one in the frame',
    },
  },
  mirrors: {
    label: 'Mirror images',
    help: 'Whether one of the wrong ones is the mirror image. Very hard: children of four to six do no better than by guessing.',
  },
  layout: {
    label: 'Laid out',
    help: 'How the figures to choose from stand.',
    choices: { row: 'in one row', grid: 'in two rows from four up' },
  },
};

const STEPS: readonly string[] = [
  'one of three is the same shape but bigger, the two others are of one shape',
  'the wrong ones differ from each other',
  'three to choose from become four',
  'the right one is turned a quarter',
  'pointing becomes drawing a ring',
  'colours differ and say nothing',
  'four to choose from become five',
  'the other shapes come nearer to the one in the frame',
  'five to choose from become six',
  'two are to be found',
  'the right ones lie at a slant',
  'a wrong one has the colour of the one in the frame',
  'six to choose from become eight',
];

const DOING: Readonly<Record<Response, readonly [one: string, several: string]>> = {
  point: ['Put your finger on it.', 'Put your finger on them.'],
  ring: ['Draw a ring round it.', 'Draw a ring round each.'],
  cross: ['Draw a cross on it.', 'Draw a cross on each.'],
};

const ENGLISH: Words = {
  name: 'turned shapes',
  about: 'Knows a shape again when it is turned, bigger, smaller or of another colour.',
  steps: STEPS,
  parameters: PARAMETER_WORDS,
  say,
  show: () =>
    'Trace the one in the frame on thin paper, lay it on each of the others, and turn it round without turning it over: does it fit? Where it is bigger or smaller, say together what is the same about it.',
  help: () => [
    'Turn the sheet round and look again.',
    'Say what the framed one has, such as a corner, a long side or a hole, and look for that.',
  ],
  easierNow: () => 'Cover some of the wrong ones.',
  harderNow: () => 'Ask which way it would have to be turned, before anything is traced.',
  lookFor: () => [
    'One that lies like the framed one, or has its colour or size, may be chosen for that alone.',
    'Slants are hard before five, so a slip there says little.',
  ],
  describe,
  answer,
};

export const WORDS: Readonly<Record<Language, Words>> = { en: ENGLISH };

function say({ matches = 1, mirrors, response = 'point' }: Printed): readonly string[] {
  const isOne = matches === 1;
  return [
    isOne
      ? 'Which has the same shape as the one in the frame?'
      : `Which ${numberWord(matches)} have the same shape as the one in the frame?`,
    DOING[response][isOne ? 0 : 1],
    'It may be turned, and bigger or smaller.',
    ...(mirrors ? ['But it must not be turned over, as in a mirror.'] : []),
  ];
}

function describe({ model, choices }: Printed): string {
  const all = [model, ...choices];
  const names = choices.map((figure, place) => `${place + 1} ${nameAmong(all, figure)}`);
  return `In the frame: ${nameAmong(all, model)}. To choose from: ${names.join('; ')}.`;
}

function answer(printed: Printed, key: unknown): string {
  const places = answerSchema.parse(key);
  const turns = places.map((place) => `the ${ordinalWord(place)}${lyingOf(printed, place)}`);
  const verb = places.length === 1 ? 'has' : 'have';
  return `Counted along the rows, ${listOf(turns)} ${verb} the shape of the one in the frame.`;
}

/** Such as ", turned and bigger,". */
function lyingOf({ model, choices }: Printed, place: number): string {
  const figure = choices[place];
  if (!figure) return '';
  const isTurned =
    stanceOf(figure).turn !== stanceOf(model).turn && symmetryTurnDeg(formOf(model)) > 1;
  const [size, modelSize] = [figure.size ?? 1, model.size ?? 1];
  const parts = [
    ...(isTurned ? ['turned'] : []),
    ...(size === modelSize ? [] : [size > modelSize ? 'bigger' : 'smaller']),
  ];
  return parts.length === 0 ? '' : ` (${listOf(parts)})`;
}
