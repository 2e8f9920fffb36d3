// English words for figures, and the order they stand in.
import type { ColourName } from '../palette/index.ts';
import type { DotLayout, Fill } from './figure.ts';
import type { FigureWords } from './figure-words.ts';
import { type FormId, isPicture, isShape, isSign, type Shape, type Sign } from './form-names.ts';
import { scriptLetterWord } from './script-words-en.ts';

const SHAPE_WORDS: Readonly<Record<Shape, string>> = {
  circle: 'circle',
  oval: 'oval',
  square: 'square',
  oblong: 'oblong',
  triangle: 'triangle',
  diamond: 'diamond',
  heart: 'heart',
  star: 'star',
  crescent: 'crescent',
  cross: 'cross',
  arrow: 'arrow',
  drop: 'drop',
  'half-circle': 'half circle',
  pentagon: 'pentagon',
  hexagon: 'hexagon',
  leaf: 'leaf',
};

const SIGN_WORDS: Readonly<Record<Sign, string>> = {
  'sign-dot': 'dot',
  'sign-upright-line': 'upright line',
  'sign-level-line': 'level line',
  'sign-ring': 'ring',
  'sign-plus': 'plus',
  'sign-oblique-cross': 'oblique cross',
  'sign-wave': 'wave',
  'sign-tick': 'tick',
  'sign-square': 'open square',
  'sign-triangle': 'open triangle',
};

const COLOUR_WORDS: Readonly<Record<ColourName, string>> = {
  red: 'red',
  orange: 'orange',
  yellow: 'yellow',
  green: 'green',
  blue: 'blue',
  purple: 'purple',
  pink: 'pink',
  brown: 'brown',
  grey: 'grey',
  black: 'black',
  white: 'white',
};

const FILL_WORDS: Readonly<Record<Fill, string>> = {
  solid: 'solid',
  outline: 'in outline',
  'upright-stripes': 'with upright stripes',
  'level-stripes': 'with level stripes',
  'slanted-stripes': 'with slanted stripes',
  spots: 'with spots',
  checks: 'with checks',
  zigzag: 'with a zigzag',
  waves: 'with waves',
  bricks: 'with bricks',
};

const LAYOUT_WORDS: Readonly<Record<DotLayout, string>> = {
  dice: 'as on a die',
  row: 'in a row',
  'scattered-1': 'scattered one way',
  'scattered-2': 'scattered another way',
  'scattered-3': 'scattered a third way',
};

const COUNT_WORDS = ['no', 'one', 'two', 'three', 'four', 'five', 'six'];

/** Where a form points, opens or stands, by the eighths of a turn from its upright place. */
const UP = [
  'pointing up',
  'pointing up and to the right',
  'pointing right',
  'pointing down and to the right',
  'pointing down',
  'pointing down and to the left',
  'pointing left',
  'pointing up and to the left',
];
const OPEN = [
  'open to the right',
  'open to the lower right',
  'open at the bottom',
  'open to the lower left',
  'open to the left',
  'open to the upper left',
  'open at the top',
  'open to the upper right',
];
const FLAT = [
  'with its flat side down',
  'with its flat side to the lower left',
  'with its flat side to the left',
  'with its flat side to the upper left',
  'with its flat side up',
  'with its flat side to the upper right',
  'with its flat side to the right',
  'with its flat side to the lower right',
];
const LYING = ['lying down', 'leaning to the right', 'standing up', 'leaning to the left'];
const STANDING = ['standing up', 'leaning to the right', 'lying down', 'leaning to the left'];
const UPRIGHT = [
  'the right way up',
  'leaning to the right',
  'turned a quarter to the right',
  'tipped over to the right',
  'upside down',
  'tipped over to the left',
  'turned a quarter to the left',
  'leaning to the left',
];

const WAYS: Readonly<Partial<Record<Shape | Sign, readonly string[]>>> = {
  triangle: UP,
  arrow: UP,
  drop: UP,
  'sign-triangle': UP,
  crescent: OPEN,
  'half-circle': FLAT,
  oval: LYING,
  oblong: LYING,
  diamond: STANDING,
  square: ['flat', 'on a corner'],
  cross: ['upright', 'turned to stand oblique'],
  'sign-plus': ['upright', 'turned to stand oblique'],
  'sign-oblique-cross': ['oblique', 'turned to stand upright'],
  'sign-upright-line': STANDING,
  'sign-level-line': LYING,
};

const SIZE_WORDS: readonly (readonly [least: number, word: string])[] = [
  [0.8, 'big'],
  [0.5, 'middle-sized'],
  [0, 'little'],
];

export const ENGLISH: FigureWords = {
  colour: (colour) => COLOUR_WORDS[colour],
  fill: (fill) => FILL_WORDS[fill],
  form: (form) => {
    if (form === 'dots') return 'dots';
    if (isShape(form)) return SHAPE_WORDS[form];
    if (isSign(form)) return SIGN_WORDS[form];
    if (isPicture(form)) return form.slice('picture-'.length).replaceAll('-', ' ');
    const foreign = form.startsWith('letter-') ? form.slice('letter-'.length) : '';
    return scriptLetterWord(foreign) ?? form.replace('-', ' ');
  },
  figure: ({ form, colour, size, fill, dots, mirrored, turn }) => {
    const sizeWord = SIZE_WORDS.find(([least]) => size !== undefined && size >= least)?.[1];
    const isSilhouette = isPicture(form) && (colour ?? fill) !== undefined;
    const name = dots?.count === 1 ? 'dot' : ENGLISH.form(form);
    const noun = isSilhouette ? `${name} shape` : name;
    const words = [
      dots ? COUNT_WORDS[dots.count] : undefined,
      mirrored ? 'mirrored' : undefined,
      sizeWord,
      colour ? COLOUR_WORDS[colour] : undefined,
      noun,
      dots && dots.count > 1 ? LAYOUT_WORDS[dots.layout] : undefined,
      turn === undefined ? undefined : wayOf(form, turn),
      fill && fill !== 'solid' ? FILL_WORDS[fill] : undefined,
    ];
    return words.filter((word) => word !== undefined).join(' ');
  },
};

/** Which way a figure turned clockwise from its upright place points, opens or lies. */
function wayOf(form: FormId, turnDeg: number): string | undefined {
  const ways = (isShape(form) || isSign(form) ? WAYS[form] : undefined) ?? UPRIGHT;
  return turnDeg % 45 === 0 ? ways[turnDeg / 45] : `turned ${turnDeg} degrees`;
}
