// What figures and contents are called, in each language.
import { inEachLanguage, type Language, type Say, sayIn, type Values } from '../languages/index.ts';
import type { ColourName } from '../palette/index.ts';
import type { ContentId } from './contents.ts';
import type { DotLayout, Fill } from './figure.ts';
import { type FormId, isPicture, isShape, isSign, type Shape, type Sign } from './form-names.ts';
import { MESSAGES } from './messages-en.ts';
import { isOwnPicture } from './own-forms.ts';
import { ownName } from './own-pictures.ts';
import { NUMERAL_SCRIPTS, type NumeralPool, SCRIPTS, type ScriptPool } from './script-letters.ts';

/** What is said of a figure; what is absent is left unsaid. */
export interface SaidOfFigure {
  readonly form: FormId;
  readonly colour?: ColourName | undefined;
  readonly size?: number | undefined;
  readonly fill?: Fill | undefined;
  readonly dots?: { readonly count: number; readonly layout: DotLayout } | undefined;
  readonly mirrored: boolean;
  /** Degrees clockwise from the upright place, unseen turns taken out. */
  readonly turn?: number | undefined;
}

/** `name`: as it stands in a list; `the`: as the one that is meant. */
export type FigureCase = 'name' | 'the';

/** The words of one language. */
export interface FigureWords {
  readonly colour: (colour: ColourName) => string;
  readonly fill: (fill: Fill) => string;
  readonly form: (form: FormId, as: FigureCase) => string;
  readonly figure: (said: SaidOfFigure, as: FigureCase) => string;
  readonly content: (content: ContentId) => string;
  /** What words about the form agree with, such as `f`; of no meaning where the language has no genders. */
  readonly gender: (form: FormId) => string;
}

export const FIGURE_WORDS: Readonly<Record<Language, FigureWords>> = inEachLanguage(wordsIn);

type SayFigure = Say<typeof MESSAGES>;

function wordsIn(language: Language): FigureWords {
  const say = sayIn(language, 'figures', MESSAGES);
  return {
    colour: (colour) => say(`colour.${colour}`, ALONE),
    fill: (fill) => say(`fill.${fill}`, ALONE),
    form: (form, as) => {
      const name = formText(say, form, { case: as, count: SEVERAL });
      return as === 'the' ? figureOf(say, 'the', { ...NOTHING, name }) : name;
    },
    figure: (said, as) => figureText(say, said, as),
    content: (content) => say(`content.${content}`),
    gender: (form) => formText(say, form, { case: 'gender', count: 1 }),
  };
}

/** A word that stands by itself, with no noun to agree with. */
const ALONE = { gender: 'none', count: 1, case: 'name' };
/** A form that comes in numbers is spoken of as several. */
const SEVERAL = 2;

const NOTHING = {
  count: '',
  mirrored: '',
  size: '',
  colour: '',
  layout: '',
  way: '',
  fill: '',
} as const;

function figureText(say: SayFigure, said: SaidOfFigure, as: FigureCase): string {
  const { form, colour, size, fill, dots, mirrored, turn } = said;
  const count = dots?.count ?? 1;
  const agreeing = { gender: nounOf(say, said, { case: 'gender', count }), count, case: as };
  return figureOf(say, as, {
    name: nounOf(say, said, { case: as, count }),
    count: dots ? say(`count.${countKey(dots.count)}`, agreeing) : '',
    mirrored: mirrored ? say('mirrored', agreeing) : '',
    size: size === undefined ? '' : say(sizeKey(size), agreeing),
    colour: colour ? say(`colour.${colour}`, agreeing) : '',
    layout: dots && dots.count > 1 ? say(`layout.${dots.layout}`, agreeing) : '',
    way: turn === undefined ? '' : wayOf(say, form, turn, agreeing),
    fill: fill && fill !== 'solid' ? say(`fill.${fill}`, agreeing) : '',
  });
}

function figureOf(say: SayFigure, as: FigureCase, values: Values): string {
  return say(as === 'the' ? 'figure.the' : 'figure', values)
    .replace(/\s+/g, ' ')
    .trim();
}

/** Of a picture in one colour only its outline is left. */
function nounOf(say: SayFigure, { form, colour, fill }: SaidOfFigure, values: Values): string {
  const name = formText(say, form, values);
  const isSilhouette = isPicture(form) && (colour ?? fill) !== undefined;
  return isSilhouette ? say('silhouette', { ...values, name }) : name;
}

function countKey(count: number): 0 | 1 | 2 | 3 | 4 | 5 | 6 {
  return Math.min(6, Math.max(0, Math.round(count))) as 0 | 1 | 2 | 3 | 4 | 5 | 6;
}

function sizeKey(size: number): 'size.big' | 'size.middle' | 'size.little' {
  if (size >= 0.8) return 'size.big';
  return size >= 0.5 ? 'size.middle' : 'size.little';
}

function formText(say: SayFigure, form: FormId, values: Values): string {
  if (isOwnPicture(form)) return ownPictureText(say, ownName(form), values);
  const own = `form.${form}`;
  if (isOwn(own)) return say(own, values);
  if (form.startsWith('numeral-')) return numeralText(say, form.slice('numeral-'.length), values);
  const foreign = form.startsWith('letter-') ? form.slice('letter-'.length) : '';
  const pool = POOLS.find((name) => SCRIPTS[name].includes(foreign));
  if (foreign !== '' && pool) {
    return say(`form.${pool}`, { ...values, letter: letterName(say, pool, foreign) });
  }
  const [height, letter = ''] = form.split('-');
  return say(height === 'capital' ? 'form.capital' : 'form.small', { ...values, letter });
}

/** What it was called; only the gender is that of any picture, since a name tells none. */
function ownPictureText(say: SayFigure, name: string | undefined, values: Values): string {
  const said = say('form.own-picture', values);
  return name === undefined || values.case === 'gender' ? said : name;
}

function isOwn(key: string): key is keyof typeof MESSAGES {
  return Object.hasOwn(MESSAGES, key);
}

/** Numerals of every script are told by the digits of the language. */
function numeralText(say: SayFigure, numeral: string, values: Values): string {
  const pool = NUMERAL_POOLS.find((name) => NUMERAL_SCRIPTS[name].includes(numeral));
  if (!pool) return say('form.numeral', { ...values, digit: numeral });
  return say(`form.${pool}`, {
    ...values,
    digit: String([...NUMERAL_SCRIPTS[pool]].indexOf(numeral)),
  });
}

const POOLS = Object.keys(SCRIPTS) as readonly ScriptPool[];
const NUMERAL_POOLS = Object.keys(NUMERAL_SCRIPTS) as readonly NumeralPool[];
const LETTER_NAMES = {
  'cyrillic-capitals': 'letters.cyrillic',
  'cyrillic-small': 'letters.cyrillic',
  'greek-capitals': 'letters.greek',
  'greek-small': 'letters.greek',
  'devanagari-letters': 'letters.devanagari',
  'arabic-letters': 'letters.arabic',
  'devanagari-varnamala': 'letters.varnamala',
  'arabic-letters-with-hamza': 'letters.arabic-with-hamza',
} as const satisfies Readonly<Record<ScriptPool, keyof typeof MESSAGES>>;

function letterName(say: SayFigure, pool: ScriptPool, letter: string): string {
  const place = [...SCRIPTS[pool]].indexOf(letter);
  return say(LETTER_NAMES[pool]).split(',')[place] ?? letter;
}

/** Where a form points, opens or stands, by the parts of a turn from its upright place. */
const WAYS = {
  triangle: 'up',
  arrow: 'up',
  drop: 'up',
  'sign-triangle': 'up',
  crescent: 'open',
  'half-circle': 'flat',
  oval: 'lying',
  oblong: 'lying',
  diamond: 'standing',
  square: 'square',
  cross: 'cross',
  'sign-plus': 'cross',
  'sign-oblique-cross': 'oblique',
  'sign-upright-line': 'standing',
  'sign-level-line': 'lying',
} as const satisfies Readonly<Partial<Record<Shape | Sign, string>>>;

/** Which way a figure turned clockwise from its upright place points, opens or lies. */
function wayOf(say: SayFigure, form: FormId, turnDeg: number, agreeing: Values): string {
  if (turnDeg % 45 !== 0) return say('way.degrees', { ...agreeing, degrees: turnDeg });
  const ways = isShape(form) || isSign(form) ? WAYS[form as keyof typeof WAYS] : undefined;
  const key = `way.${ways ?? 'upright'}.${turnDeg / 45}`;
  return isOwn(key) ? say(key, agreeing) : '';
}
