// What shadows says to the adult and, through the adult, to the child.
import { type Figure, figureName } from '../../figures/index.ts';
import type { Language } from '../../languages/index.ts';
import type { ActivityWords } from '../activity.ts';
import { CONTENT_PHRASES, capitalised, counted, listOf, ordinalWord } from '../wording.ts';
import {
  answerSchema,
  type PARAMETERS,
  type Printed,
  type Response,
  SHADOW_CONTENTS,
} from './task.ts';

type Words = ActivityWords<typeof PARAMETERS, Printed>;

const PARAMETER_WORDS: Words['parameters'] = {
  content: {
    label: 'Look at',
    help: 'Whose shadows they are. Only what differs in outline has a shadow of its own.',
    choices: Object.fromEntries(
      SHADOW_CONTENTS.map((content) => [content, CONTENT_PHRASES[content] ?? content]),
    ),
  },
  response: {
    label: 'The child',
    help: 'What the child does with the right shadow. Several figures can only be joined to theirs.',
    choices: {
      point: 'points to the shadow',
      ring: 'draws a ring round the shadow',
      join: 'draws a line to the shadow',
    },
  },
  models: { label: 'Figures', help: 'How many figures look for their shadow.' },
  shadows: {
    label: 'Shadows',
    help: 'How many shadows there are. Where they are more than the figures, some belong to none.',
  },
  likeness: {
    label: 'How like they are',
    help: 'Whether the outlines are far from each other or near, always far enough to be told apart. Directions are always as they are.',
    choices: { far: 'far apart', middle: 'in between', near: 'near each other' },
  },
  resize: {
    label: 'Size of the shadows',
    help: 'How large the shadows are beside their figures. The outline tells, never the size.',
    choices: {
      same: 'as large',
      smaller: 'smaller',
      bigger: 'bigger',
      mixed: 'of several sizes',
    },
  },
  mirrors: {
    label: 'Mirror images',
    help: 'Whether one of the wrong shadows is the mirror image of the figure. Very hard: side by side, children of four to six do no better than by guessing. Only with directions.',
    choices: {
      none: 'none',
      'left-right': 'pointing left and right',
      slanted: 'slanted both ways',
    },
  },
};

const STEPS: readonly string[] = [
  'one picture has its shadow among three that are very unlike',
  'three shadows become four',
  'pointing becomes drawing a line',
  'two pictures look for their shadows',
  'four shadows become five',
  'two pictures become three',
  'the shadows are smaller than the pictures',
  'the outlines come nearer to each other',
  'three pictures become four',
  'five shadows become six',
  'the outlines come still nearer to each other',
  'four pictures become five',
  'the shadows are of several sizes',
];

const DOING: Readonly<Record<Response, string>> = {
  point: 'Put your finger on it.',
  ring: 'Draw a ring round it.',
  join: 'Draw a line to it, from dot to dot.',
};

const ENGLISH: Words = {
  name: 'shadows',
  about: 'Looks at the outline alone and finds the shadow that a figure would throw.',
  steps: STEPS,
  parameters: PARAMETER_WORDS,
  say,
  show: () =>
    'Go round the edge of the figure with your finger, then round the edge of a shadow, and ask: is it the same all round? Where it is not, say together what sticks out or is missing.',
  help: () => [
    'Cover all shadows but two, the right one among them.',
    'Look for one thing that sticks out, and find it in a shadow.',
  ],
  easierNow: () => 'Do one figure only, and cover the shadows that are most like its own.',
  harderNow: () =>
    'Cover the figure after a good look, and let the child find its shadow from memory.',
  lookFor: () => [
    'If eyes, stripes or colours are missed in a shadow, the inside was looked at: a shadow shows the edge alone.',
    'The one straight below may be chosen for its place.',
  ],
  describe,
  answer,
};

export const WORDS: Readonly<Record<Language, Words>> = { en: ENGLISH };

function say({ models, shadows, response = 'point' }: Printed): readonly string[] {
  if (models.length === 1) {
    return ['Look at the one in the frame.', 'Which shadow is its own?', DOING[response]];
  }
  const spare = shadows.length > models.length ? ['Some shadows belong to nobody.'] : [];
  return [
    'Each one in a frame has a shadow below.',
    'Which shadow is its own?',
    ...spare,
    DOING[response],
  ];
}

function describe({ models, shadows }: Printed): string {
  const framed = models.map(nameOf).join(', ');
  const dark = shadows.map((figure, place) => `${place + 1} ${nameOf(figure)}`).join('; ');
  const count = capitalised(counted(shadows.length, 'shadow', 'shadows'));
  return `In ${models.length === 1 ? 'the frame' : 'frames'}: ${framed}. ${count}: ${dark}.`;
}

function answer({ models }: Printed, key: unknown): string {
  const parts = answerSchema.parse(key).map((place, index) => {
    const model = models[index];
    return `the ${ordinalWord(place)} is that of the ${model ? nameOf(model) : 'figure'}`;
  });
  return `Of the shadows, counted along the rows, ${listOf(parts)}.`;
}

/** What a figure is, whatever it is inked in. */
function nameOf({ form, turn, mirrored }: Figure): string {
  return figureName({ form, turn, mirrored });
}
