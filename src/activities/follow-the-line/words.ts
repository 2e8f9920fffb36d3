// What follow-the-line says to the adult and, through the adult, to the child.
import { type Figure, figureName } from '../../figures/index.ts';
import type { Language } from '../../languages/index.ts';
import type { ActivityWords } from '../activity.ts';
import {
  CONTENT_PHRASES,
  capitalised,
  counted,
  listOf,
  nameAmong,
  ordinalWord,
} from '../wording.ts';
import { answerSchema, type PARAMETERS, type Printed, type Response } from './task.ts';

type Words = ActivityWords<typeof PARAMETERS, Printed>;

const PARAMETER_WORDS: Words['parameters'] = {
  content: {
    label: 'Lines start from',
    help: 'What stands where the lines start, and tells one start from another.',
    choices: CONTENT_PHRASES,
  },
  response: {
    label: 'The child',
    help: 'What the child does. To point or to draw, each line leads to something; for stickers and colouring in, to an empty circle. Stickers go with coloured dots only.',
    choices: {
      point: 'follows with a finger and tells',
      trace: 'draws along each line',
      sticker: 'puts a sticker at the end',
      'colour-in': 'colours in the end',
    },
  },
  lines: { label: 'Lines', help: 'How many lines there are to follow.' },
  crossings: {
    label: 'Crossings',
    help: 'How often two lines cross in all. They always cross at a clear angle.',
  },
  lineColours: {
    label: 'Lines are',
    help: 'Lines in colours of their own are easy to keep apart. In grey print all are in ink.',
    choices: { own: 'each in its own colour', ink: 'all in one ink' },
  },
  direction: {
    label: 'Lines run',
    help: 'Whether the lines start at the left or at the top.',
    choices: { across: 'from left to right', down: 'from top to bottom' },
  },
  stickerMm: {
    label: 'Sticker size',
    help: 'How wide the dots and empty circles are where the child puts stickers.',
    choices: { '10': '10 mm', '13': '13 mm', '16': '16 mm', '19': '19 mm' },
  },
};

const STEPS: readonly string[] = [
  'two lines in two colours wind side by side',
  'the two lines cross once',
  'two lines become three',
  'one crossing becomes two',
  'all lines are in one ink',
  'two crossings become four',
  'three lines become four',
  'four crossings become six',
  'four lines become five',
  'following with a finger becomes drawing along the line',
  'six crossings become eight',
  'eight crossings become ten',
  'five lines become six',
  'ten crossings become thirteen',
];

const DOING: Readonly<Record<Response, string>> = {
  point: 'Follow each line with your finger and tell me what it leads to.',
  trace: 'Draw along each line to where it ends.',
  sticker: 'Put a sticker of the same colour where its line ends.',
  'colour-in': 'Colour in the circle where its line ends, in the same colour.',
};

const ENGLISH: Words = {
  name: 'follow the line',
  about: 'Follows a winding line with the eyes from start to end, across other lines.',
  steps: STEPS,
  parameters: PARAMETER_WORDS,
  say: ({ response = 'point' }) => ['Where does each line lead?', DOING[response]],
  show: () =>
    'Put a finger on the first start and go slowly along its line. Where another line crosses, say: we go straight on.',
  help: () => [
    'Go along with your finger just ahead of the child’s, and stop before each crossing.',
  ],
  easierNow: () => 'Draw over one line with a bright crayon, and let the child follow that one.',
  harderNow: () =>
    'Let the child follow with the eyes alone, say where it ends, and then go along with a finger.',
  lookFor: () => [
    'Changing to another line comes from turning off where lines cross.',
    'Jumping to the nearest end may mean that the line was not followed at all.',
  ],
  describe,
  answer,
};

export const WORDS: Readonly<Record<Language, Words>> = { en: ENGLISH };

function describe({ starts, ends, lines, direction }: Printed): string {
  const [at, to, order] =
    direction === 'down'
      ? ['at the top', 'at the bottom', 'from left to right']
      : ['at the left', 'at the right', 'from top to bottom'];
  const where = ends
    ? `They end ${to}, ${order}, at: ${listOf(namesOf(ends))}.`
    : `They end ${to} at empty circles.`;
  const count = capitalised(counted(lines.length, 'line', 'lines'));
  return `${count} wind from one side to the other. They start ${at}, ${order}, from: ${listOf(namesOf(starts))}. ${where}`;
}

function answer({ starts, ends, direction }: Printed, key: unknown): string {
  const from = direction === 'down' ? 'from the left' : 'from the top';
  const endNames = ends && namesOf(ends);
  const said = answerSchema.parse(key).map((place, start) => {
    const end = endNames
      ? `the ${endNames[place] ?? ''}`
      : `the ${ordinalWord(place)} circle ${from}`;
    return `the ${namesOf(starts)[start] ?? ''} to ${end}`;
  });
  return `The lines lead from ${listOf(said)}.`;
}

function namesOf(figures: readonly Figure[]): readonly string[] {
  const isPlain = figures.every(({ fill = 'solid' }) => fill === 'outline');
  return figures.map((figure) =>
    isPlain ? figureName({ form: figure.form }) : nameAmong(figures, figure),
  );
}
