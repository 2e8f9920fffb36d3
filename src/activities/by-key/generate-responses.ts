// Draws the responses of a key from what the hand can do, and names the forms that must then stay away.
import type { Random } from '../../base/index.ts';
import type { FormId, Sign, Texture } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { type ColourName, coloursOf, drawColours, initialOf } from '../../palette/index.ts';
import { isOfDots, lookedAt, RESPONSE_COLOURS } from './contents.ts';
import type { Content, Parameters } from './parameters.ts';
import type { Response } from './task.ts';

/**
 * Signs in the order in which hands learn them: dot and line, ring, plus, oblique cross, square, triangle
 * (the order of copying ages in the Gesell tradition; sources differ by a year or more). Wave and tick stand
 * before the square for want of corners to meet: common practice, no source.
 */
const SIGNS_BY_HAND: readonly Sign[] = [
  'sign-dot',
  'sign-upright-line',
  'sign-level-line',
  'sign-ring',
  'sign-plus',
  'sign-oblique-cross',
  'sign-wave',
  'sign-tick',
  'sign-square',
  'sign-triangle',
];

/** The easiest signs, this many more than needed, are drawn from, so that no sign goes with one figure. */
const SPARE_SIGNS = 2;

/** Forms that stand in the way of a sign because the sign, once drawn, looks like them. By eye. */
const KEPT_FROM: Readonly<Record<Sign, readonly FormId[]>> = {
  'sign-dot': ['circle', 'dots'],
  'sign-upright-line': ['small-l', 'small-i', 'capital-I', 'numeral-1', 'letter-ا'],
  'sign-level-line': [],
  'sign-ring': ['circle', 'oval', 'capital-O', 'capital-Q', 'small-o', 'numeral-0'],
  'sign-plus': ['cross', 'small-t', 'capital-T'],
  'sign-oblique-cross': ['cross', 'small-x', 'capital-X'],
  'sign-wave': [],
  'sign-tick': ['small-v', 'capital-V'],
  'sign-square': ['square', 'oblong', 'diamond'],
  'sign-triangle': ['triangle', 'capital-A', 'letter-Δ'],
};

/** Textures that a child can draw with a pencil; of the last pair only one at a time, they are too alike. */
const DRAWN_TEXTURES: readonly Texture[] = [
  'upright-stripes',
  'level-stripes',
  'slanted-stripes',
  'spots',
];
const ONE_OF_TEXTURES: readonly Texture[] = ['waves', 'zigzag'];

export interface DrawnResponses {
  readonly responses: readonly Response[];
  /** Forms that would look like one of the responses. */
  readonly keptOut: readonly FormId[];
}

/** As many different responses as the key has entries, in random order. */
export function drawResponses(
  random: Random,
  { content, response, entries }: Pick<Parameters, 'content' | 'response' | 'entries'>,
  style: PrintStyle,
): DrawnResponses {
  if (response === 'sign') return drawSigns(random, content, entries);
  if (response === 'fill') {
    const textures = random.sample(texturesFor(random, content), entries);
    return { responses: textures.map((texture) => ({ kind: response, texture })), keptOut: [] };
  }
  const colours = drawColours(random, entries, style.print, coloursOf(style, RESPONSE_COLOURS));
  return {
    responses: colours.map((colour) => ({ kind: response, colour })),
    keptOut: style.print === 'grey' ? colours.flatMap(lettersOf) : [],
  };
}

/** The letters that mark a colour in grey print: as figures they would be taken for it. */
function lettersOf(colour: ColourName): readonly FormId[] {
  return [...initialOf(colour)].flatMap((letter): readonly FormId[] => [
    `capital-${letter.toUpperCase()}`,
    `small-${letter.toLowerCase()}`,
  ]);
}

function drawSigns(random: Random, content: Content, entries: number): DrawnResponses {
  const able = SIGNS_BY_HAND.filter((sign) => !isInTheWay(sign, content));
  const signs = random.sample(able.slice(0, entries + SPARE_SIGNS), entries);
  return {
    responses: signs.map((sign) => ({ kind: 'sign', sign })),
    keptOut: signs.flatMap((sign) => KEPT_FROM[sign]),
  };
}

/** Dots must stay countable; dots of colour are circles; what points may be a triangle. */
function isInTheWay(sign: Sign, content: Content): boolean {
  if (isOfDots(content)) return sign === 'sign-dot';
  if (content === 'colours' || content === 'colours-and-sizes')
    return KEPT_FROM[sign].includes('circle');
  return lookedAt(content).includes('turn') && sign === 'sign-triangle';
}

/** Spots would be counted where dots are looked at. */
function texturesFor(random: Random, content: Content): readonly Texture[] {
  const drawn = [...DRAWN_TEXTURES, random.pick(ONE_OF_TEXTURES)];
  return isOfDots(content) ? drawn.filter((texture) => texture !== 'spots') : drawn;
}
