// What cannot be asked for together, and the nearest thing that can.
import { type Refusal, type Told, told } from '../../base/index.ts';
import {
  ATTRIBUTES,
  type Attribute,
  attributesOf,
  type Figure,
  formsOf,
} from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { COLOUR_NAMES } from '../../palette/index.ts';
import { shortOfColours } from '../colours-at-hand.ts';
import { fitsUpright } from '../upright-room.ts';
import { MOST_KIND_PICTURES } from './generate-pictures.ts';
import { LEAST_SIZE_DRAWN } from './generate-values.ts';
import { room } from './room.ts';
import { ID, PARAMETERS, type Parameters } from './task.ts';
import { idleAttributes, isRead, LEAST_TO_VARY, mostGroups, plainContent } from './varying.ts';

/** All refusals for values that are each within their own range; empty where they go together. */
export function limits(values: Parameters, style: PrintStyle): readonly Refusal[] {
  const choices = [
    oddRefusal(values),
    varyRefusal(values, style),
    mirrorsRefusal(values),
    coloursRefusal(values, style),
  ];
  const refusals = choices.filter((refusal) => refusal !== undefined);
  if (refusals.length > 0) return refusals;
  const figures = figuresRefusal(values);
  return figures ? [figures] : [];
}

function attributesIn({ content }: Parameters): readonly Attribute[] {
  const plain = plainContent(content);
  return plain ? attributesOf(plain) : [];
}

function oddRefusal(values: Parameters): Refusal | undefined {
  const { odd } = values;
  const attributes = attributesIn(values);
  if (odd === 'any' || attributes.includes(odd)) return undefined;
  const choices = ['any', ...ATTRIBUTES.filter((attribute) => attributes.includes(attribute))];
  const because =
    attributes.length === 0
      ? told('odd-one-out', 'no.kinds')
      : told('odd-one-out', 'no.odd', { attribute: odd });
  return { code: 'not-a-choice', at: at('odd'), got: odd, choices, nearest: 'any', because };
}

function varyRefusal(values: Parameters, style: PrintStyle): Refusal | undefined {
  const because = varyFault(values, style);
  if (!values.vary || because === undefined) return undefined;
  return { ...no('vary'), because };
}

function varyFault({ content }: Parameters, { print }: PrintStyle): Told | undefined {
  if (content === 'pictures') {
    return told('odd-one-out', 'no.pictures');
  }
  return print === 'grey' && isRead(content) ? told('odd-one-out', 'no.grey') : undefined;
}

function mirrorsRefusal(values: Parameters): Refusal | undefined {
  if (!values.mirrors || attributesIn(values).includes('turn')) return undefined;
  return { ...no('mirrors'), because: told('odd-one-out', 'no.mirrors') };
}

/** Figures need colours, and a sticker one that no figure has. */
function coloursRefusal(values: Parameters, style: PrintStyle): Refusal | undefined {
  const used = coloursUsed(values);
  const refusal = shortOfColours(ID, used, style);
  if (refusal || values.response !== 'sticker') return refusal;
  const inkless = COLOUR_NAMES.filter((name) => name !== 'black');
  return used === 0
    ? shortOfColours(ID, 1, style, inkless)
    : shortOfColours(ID, used + 1, style, COLOUR_NAMES);
}

/** How many colours the figures have at most. */
function coloursUsed(values: Parameters): number {
  const plain = plainContent(values.content);
  if (!plain) return 0;
  const told = values.odd === 'any' ? attributesOf(plain) : [values.odd];
  const groups = told.map((odd) => {
    if (odd === 'colour') return 2;
    const isIdle = values.vary && idleAttributes(plain, odd).includes('colour');
    if (isIdle) return mostGroups(values.figures - 1);
    return attributesOf(plain).includes('colour') ? 1 : 0;
  });
  return Math.max(...groups);
}

function no(name: 'vary' | 'mirrors'): Extract<Refusal, { code: 'not-a-choice' }> {
  return { code: 'not-a-choice', at: at(name), got: true, choices: ['false'], nearest: 'false' };
}

function figuresRefusal(values: Parameters): Refusal | undefined {
  const { figures: got } = values;
  const min = fewest(values);
  const [max, tooMany] = most(values);
  if (got >= min && got <= max) return undefined;
  const because = got > max ? tooMany : tooFew(values);
  return { code: 'out-of-range', at: at('figures'), got, min, max, because };
}

/** With fewer in two rows, one would stand alone in its row. */
const FEWEST_IN_ROWS = 4;

function fewest({ vary, layout }: Parameters): number {
  if (vary) return LEAST_TO_VARY;
  return layout === 'row' ? PARAMETERS.figures.min : FEWEST_IN_ROWS;
}

function tooFew({ vary }: Parameters): Told {
  return vary ? told('odd-one-out', 'no.vary') : told('odd-one-out', 'no.alone');
}

/** How many figures will do, and why no more. */
function most(values: Parameters): readonly [number, Told] {
  const isOfKinds = values.content === 'picture-kinds';
  let max = isOfKinds ? MOST_KIND_PICTURES : PARAMETERS.figures.max;
  while (max > PARAMETERS.figures.min && !fitsUpright(room(largest({ ...values, figures: max })))) {
    max -= 1;
  }
  const because =
    max === MOST_KIND_PICTURES && isOfKinds
      ? told('odd-one-out', 'no.kind-most')
      : told('odd-one-out', 'no.row');
  return [max, because];
}

/** Figures of the values, at their largest. */
function largest(values: Parameters) {
  const { figures: count, layout } = values;
  const content = plainContent(values.content) ?? 'pictures';
  const figure: Figure = {
    form: formsOf(content)[0],
    ...(attributesOf(content).includes('size') ? { size: LEAST_SIZE_DRAWN[values.likeness] } : {}),
  };
  const figures = Array.from({ length: count }, () => figure);
  if (layout === 'row') return { figures };
  const columns = Math.ceil(count / 2);
  const shifts = layout === 'loose' ? figures.map(() => ({ x: 0, y: 0 })) : undefined;
  return { figures, columns, shifts };
}

function at(name: keyof Parameters): string {
  return `${ID} › ${name}`;
}
