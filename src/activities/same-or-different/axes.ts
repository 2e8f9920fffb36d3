// What pairs are made of: the values of each attribute that a pair may differ in, and what changes idly.
import {
  type Attribute,
  areLookAlikes,
  attributesOf,
  type ContentId,
  directionRelation,
  dotsOf,
  type Figure,
  fairForAge,
  formOf,
  formsKey,
  formsOf,
  MOST_DOTS,
  pairLikeness,
  SPREAD_LAYOUTS,
  shareApart,
  TEXTURES,
  TEXTURES_MIXED_UP,
} from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { coloursOf, leastDifferenceDe00 } from '../../palette/index.ts';
import type { PairValues } from './task.ts';

type Value = Partial<Figure>;

/** Two values that a child can tell apart. */
export type Candidate = readonly [Value, Value];

/** An attribute in which the pairs of a task may differ. */
export interface CheckedAxis {
  readonly attribute: Attribute;
  readonly candidates: readonly Candidate[];
  /** All values that the candidates are made of. */
  readonly values: readonly Value[];
}

/** Shares of the full size, common practice, no source: the smallest is large enough to see. */
const SIZES = [1, 0.9, 0.8, 0.7, 0.6, 0.5];
const TURNS = [0, 90, 180, 270];
const SLANTED_TURNS = [45, 135, 225, 315];

/** For whom a difference of each likeness is fair. */
const AGES = { far: 3, middle: 4, near: 5 } as const;
/** A band of likeness holds this share of the candidates, and no fewer than these. */
const BAND_SHARE = 1 / 3;
const LEAST_IN_BAND = 5;
/** Greys of two colours that a pair differs in are at least so far apart; their marks tell them too. */
const GREY_DE00 = 10;

/** On which figure the values of an attribute are measured. */
const MEASURED_ON: Readonly<Record<Attribute, Figure>> = {
  colour: { form: 'circle' },
  form: {},
  size: { form: 'circle' },
  turn: { form: 'arrow' },
  count: { form: 'dots', layout: 'dice' },
  fill: { form: 'circle' },
};

type Wanted = Pick<PairValues, 'content' | 'likeness' | 'mirrors'>;

const known = new Map<string, CheckedAxis>();

/** The attributes in which pairs may differ, each with its candidates. */
export function checkedAxes(
  values: Wanted & Pick<PairValues, 'checked'>,
  style: PrintStyle,
): readonly CheckedAxis[] {
  return attributesOf(values.content)
    .slice(0, values.checked)
    .map((attribute) => axisOf(attribute, values, style));
}

function axisOf(attribute: Attribute, wanted: Wanted, style: PrintStyle): CheckedAxis {
  const { content, likeness, mirrors } = wanted;
  const forms = formsKey(content);
  const key = [attribute, forms, likeness, mirrors, style.print, ...coloursOf(style)].join(' ');
  const before = known.get(key);
  if (before) return before;
  const candidates = bandOf(attribute, candidatesOf(attribute, wanted, style), likeness);
  const axis = { attribute, candidates, values: [...new Set(candidates.flat())] };
  known.set(key, axis);
  return axis;
}

function candidatesOf(
  attribute: Attribute,
  { content, likeness, mirrors }: Wanted,
  style: PrintStyle,
): readonly Candidate[] {
  const base = MEASURED_ON[attribute];
  const all = pairsOf(valuesOf(attribute, content, mirrors, style));
  if (attribute === 'turn' && mirrors !== 'none') {
    return all.filter(([one, other]) => isMirrored({ ...base, ...one }, { ...base, ...other }));
  }
  return all.filter(([one, other]) => {
    if (!isPrintable(one, other, style)) return false;
    if (attribute === 'form') return !areLookAlikes(formOf(one), formOf(other));
    const pair = [
      { ...base, ...one },
      { ...base, ...other },
    ] as const;
    return fairForAge(...pair, AGES[likeness]) && !isMirrored(...pair);
  });
}

function isMirrored(one: Figure, other: Figure): boolean {
  const relation = directionRelation(one, other);
  return relation === 'left-right' || relation === 'opposite-obliques';
}

function isPrintable(one: Value, other: Value, { print }: PrintStyle): boolean {
  const colours = [one, other].flatMap(({ colour }) => (colour ? [colour] : []));
  const fills = [one, other].filter(
    ({ fill }) => fill !== undefined && TEXTURES_MIXED_UP.some((texture) => texture === fill),
  );
  const isFarInGrey = print === 'colour' || leastDifferenceDe00(colours, print) >= GREY_DE00;
  return fills.length < 2 && (colours.length < 2 || isFarInGrey);
}

/** The third of the candidates that is least alike, most alike, or between; with those as like as its ends. */
function bandOf(
  attribute: Attribute,
  candidates: readonly Candidate[],
  likeness: PairValues['likeness'],
): readonly Candidate[] {
  const measured = candidates.map((candidate) => ({
    candidate,
    like: likenessIn(attribute, candidate),
  }));
  const likes = measured.map(({ like }) => like).sort((a, b) => a - b);
  const size = Math.max(
    Math.ceil(likes.length * BAND_SHARE),
    Math.min(LEAST_IN_BAND, likes.length),
  );
  const spare = likes.length - size;
  const start = { far: 0, middle: Math.floor(spare / 2), near: spare }[likeness];
  const [least = 0, most = 1] = [likes[start], likes[start + size - 1]];
  return measured
    .filter(({ like }) => like >= least && like <= most)
    .map(({ candidate }) => candidate);
}

/** Forms by one share alone, which is mostly measured beforehand: there are thousands of pairs of pictures. */
function likenessIn(attribute: Attribute, [one, other]: Candidate): number {
  if (attribute === 'form') return 1 - shareApart(formOf(one), formOf(other));
  const base = MEASURED_ON[attribute];
  return pairLikeness({ ...base, ...one }, { ...base, ...other });
}

function valuesOf(
  attribute: Attribute,
  content: ContentId,
  mirrors: PairValues['mirrors'],
  style: PrintStyle,
): readonly Value[] {
  switch (attribute) {
    case 'colour':
      return coloursOf(style).map((colour) => ({ colour }));
    case 'form':
      return formsOf(content).map((form) => ({ form }));
    case 'size':
      return SIZES.map((size) => ({ size }));
    case 'turn':
      return (mirrors === 'slanted' ? SLANTED_TURNS : TURNS).map((turn) => ({ turn }));
    case 'count':
      return Array.from({ length: MOST_DOTS }, (_, index) => dotsOf(index + 1, 'area'));
    case 'fill':
      return TEXTURES.map((fill) => ({ fill }));
  }
}

/** What may change from pair to pair and never within one. */
export interface IdleAxis {
  readonly values: readonly Value[];
  /** Whether figures need a value even where nothing changes idly. */
  readonly isNeeded: boolean;
}

/** In grey print no colour is lent to forms that have none: the marks that tell colours would crowd letters. */
export function idleAxes(
  { content, checked }: Pick<PairValues, 'content' | 'checked'>,
  style: PrintStyle,
): readonly IdleAxis[] {
  const attributes = attributesOf(content);
  const unchecked = attributes.slice(checked).map((attribute) => ({
    values: valuesOf(attribute, content, 'none', style),
    isNeeded: attribute !== 'size',
  }));
  const forms = formsOf(content);
  const isOneForm = !attributes.includes('form');
  const isDots = attributes.includes('count');
  const isColourless =
    style.print === 'colour' &&
    content !== 'pictures' &&
    !attributes.some((own) => own === 'colour' || own === 'fill');
  return [
    ...unchecked,
    ...(isOneForm ? [{ values: forms.map((form) => ({ form })), isNeeded: true }] : []),
    ...(isDots ? [{ values: SPREAD_LAYOUTS.map((layout) => ({ layout })), isNeeded: true }] : []),
    ...(isColourless
      ? [{ values: valuesOf('colour', content, 'none', style), isNeeded: false }]
      : []),
  ];
}

function pairsOf<T>(items: readonly T[]): readonly (readonly [T, T])[] {
  return items.flatMap((one, index) =>
    items.slice(index + 1).map((other) => [one, other] as const),
  );
}
