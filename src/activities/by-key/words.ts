// What by-key says in English: to the adult, and through the adult to the child.
import { colourName, type Figure, fillName, formName } from '../../figures/index.ts';
import type { ActivityWords } from '../activity.ts';
import { CONTENT_PHRASES, listOf, nameAmong } from '../wording.ts';
import type { PARAMETERS } from './parameters.ts';
import type { Entry, Printed, Response } from './task.ts';

type Words = ActivityWords<typeof PARAMETERS, Printed>;

const STEPS: readonly string[] = [
  'two figures, a sticker for each',
  'the figures are coloured in',
  'one figure that points up or down',
  'six figures become eight',
  'a third direction joins the key',
  'rings are drawn instead of colouring in',
  'eight figures become twelve',
  'signs are drawn instead of rings',
  'form and colour count together',
  'a key of four',
  'form and direction count together',
  'twelve figures become fifteen',
  'the figures change in size, which means nothing',
  'a key of five',
  'fifteen figures become eighteen',
  'left and right stand in the same key',
  'a key of six',
  'eighteen figures become twenty-one',
];

const PARAMETER_WORDS: Words['parameters'] = {
  content: {
    label: 'What is looked at',
    help: 'What the figures in the key differ in. Two or three things together need all of them to be seen.',
    choices: {
      ...CONTENT_PHRASES,
      'dot-layouts': 'how dots lie',
      'shapes-and-directions': 'shapes in directions',
    },
  },
  response: {
    label: 'What the child does',
    help: 'What each figure gets. Stickers are easiest for the hand, then colouring in, rings, signs.',
    choices: {
      sticker: 'places a sticker',
      'colour-in': 'colours in',
      ring: 'draws a ring',
      sign: 'draws a sign',
      fill: 'fills with a pattern',
    },
  },
  entries: { label: 'Places in the key', help: 'How many different figures the key shows.' },
  items: { label: 'Figures to do', help: 'How many figures stand below the key.' },
  vary: {
    label: 'What changes without meaning anything',
    help: 'Something that the key does not use changes from figure to figure and is to be looked past.',
    choices: {
      none: 'nothing',
      size: 'size',
      colour: 'colour',
      form: 'form',
      layout: 'how the dots lie',
    },
  },
  balanced: {
    label: 'Equally often',
    help: 'Each place in the key is used as often as any other, give or take one. If not, one is used more.',
  },
  leftRight: {
    label: 'Left and right together',
    help: 'Left and right may stand in the same key, which is hard before five. Only where things point.',
  },
  stickerMm: {
    label: 'Size of the stickers in mm',
    help: 'How wide the stickers are that will be placed. Only where stickers are placed.',
  },
};

const DOING: Readonly<Record<Response['kind'], string>> = {
  sticker: 'Put the right sticker with each one.',
  'colour-in': 'Colour each one the way the key shows.',
  ring: 'Draw a ring round each one in the colour that the key shows.',
  sign: 'Give each one its sign from the key.',
  fill: 'Fill each one with the pattern that the key shows.',
};

export const ENGLISH: Words = {
  name: 'by key',
  about: 'Looks at each figure, finds it in the key, and gives it what the key says.',
  steps: STEPS,
  parameters: PARAMETER_WORDS,
  say: (printed) => {
    const kind = printed.key[0]?.response.kind ?? 'ring';
    const past = variesIn(printed);
    return [
      'Look at the top: this is the key.',
      'It shows what each one gets.',
      DOING[kind],
      ...(past === undefined ? [] : [`Never mind the ${past}: only look at what the key shows.`]),
      'Go along the rows and leave none out.',
    ];
  },
  show: (printed) => {
    const name = nameIn(printed.key, printed.key[0]);
    return `Point to the first one in the key and say “${name}”; find one below that is the same, go back to the key, and do that one together.`;
  },
  help: () => [
    'Cover all rows but one.',
    'Go with a finger from each figure up to the key and back, and ask: is it this one, or this?',
  ],
  easierNow: () => 'Cover all but one place of the key, and do only the figures that belong to it.',
  harderNow: () => 'Cover the key, do two or three by heart, and then look whether it was so.',
  lookFor: () => [
    'Doing the same again and again may mean that the key is no longer looked at.',
    'If one thing is minded and another left out, name both.',
  ],
  describe: (printed) => {
    const names = printed.key.map((entry) => nameIn(printed.key, entry));
    const doing = DOING[printed.key[0]?.response.kind ?? 'ring'];
    return `A key shows ${listOf(names)}, each with what it gets. Below stand ${printed.items.length} figures. ${doing}`;
  },
  answer: (printed, answer) => {
    const order = Array.isArray(answer) ? answer : [];
    const parts = printed.key.map((entry, place) => {
      const count = order.filter((other) => other === place).length;
      return `${count} × ${nameIn(printed.key, entry)}: ${responseName(entry.response)}`;
    });
    return `Each figure gets what the key says. ${parts.join('; ')}.`;
  },
};

/** What a figure gets, in a few words. */
export function responseName(response: Response): string {
  switch (response.kind) {
    case 'sign':
      return formName(response.sign);
    case 'fill':
      return fillName(response.texture).replace(/^with (a )?/, '');
    case 'ring':
      return `${colourName(response.colour)} ring`;
    case 'sticker':
      return `${colourName(response.colour)} sticker`;
    case 'colour-in':
      return colourName(response.colour);
  }
}

/** A figure's name without the outline that all figures share, and with sizes by rank among those of the key. */
function nameIn(key: readonly Entry[], entry: Entry | undefined): string {
  if (!entry) return '';
  const { fill, ...rest } = entry.figure;
  const all = key.map(({ figure }) => figure);
  return nameAmong(all, fill === undefined || fill === 'outline' ? rest : { ...rest, fill });
}

/** The one thing, if any, that changes from item to item although the key's figures all share it. */
function variesIn({ key, items }: Printed): string | undefined {
  const differs = (figures: readonly Figure[], field: keyof Figure) =>
    new Set(figures.map((figure) => figure[field])).size > 1;
  const figures = key.map((entry) => entry.figure);
  const fields = ['size', 'colour', 'form', 'layout'] as const;
  const field = fields.find((name) => differs(items, name) && !differs(figures, name));
  return field === 'layout' ? 'way the dots lie' : field;
}
