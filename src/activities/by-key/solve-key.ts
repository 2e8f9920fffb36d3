// What makes a key unfit by itself: too short, figures or responses too alike, responses that mislead.
import { type Told, told } from '../../base/index.ts';
import { type FormId, fairlyDifferent, formOf, type Sign } from '../../figures/index.ts';
import { filledColour, mayBeTakenFor } from './solve-looks.ts';
import type { Entry, Response } from './task.ts';

/** Forms that a drawn sign may be taken for. By eye. */
const TAKEN_FOR: Readonly<Record<Sign, readonly FormId[]>> = {
  'sign-dot': ['circle', 'dots', 'sign-dot'],
  'sign-ring': [
    'circle',
    'oval',
    'capital-O',
    'small-o',
    'numeral-0',
    'sign-ring',
    'letter-О',
    'letter-о',
    'letter-Ο',
    'letter-ο',
  ],
  'sign-upright-line': [
    'small-l',
    'capital-I',
    'numeral-1',
    'sign-upright-line',
    'letter-Ι',
    'letter-ا',
  ],
  'sign-level-line': ['sign-level-line'],
  'sign-plus': ['cross', 'small-t', 'sign-plus'],
  'sign-oblique-cross': [
    'cross',
    'small-x',
    'capital-X',
    'sign-oblique-cross',
    'letter-Х',
    'letter-х',
    'letter-Χ',
  ],
  'sign-wave': ['sign-wave'],
  'sign-tick': ['small-v', 'capital-V', 'sign-tick'],
  'sign-square': ['square', 'oblong', 'diamond', 'sign-square'],
  'sign-triangle': ['triangle', 'sign-triangle', 'letter-Δ'],
};

interface Pair {
  readonly one: Entry;
  readonly other: Entry;
}

/** The faults of a key, in words. */
export function keyFaults(key: readonly Entry[]): readonly Told[] {
  const short = key.length < 2 ? [told('by-key', 'fault.one-entry')] : [];
  const pairs = key.flatMap((one, index) =>
    key.slice(index + 1).map((other): Pair => ({ one, other })),
  );
  return [...short, ...pairs.flatMap(pairFaults)];
}

function pairFaults({ one, other }: Pair): readonly Told[] {
  const names = { one: { figure: one.figure }, other: { figure: other.figure } };
  return [
    ...(mayBeTakenFor(one.figure, other.figure)
      ? [told('by-key', 'fault.entries-alike', names)]
      : []),
    ...(one.response.kind === other.response.kind ? [] : [told('by-key', 'fault.kinds', names)]),
    ...(responsesAlike(one.response, other.response)
      ? [told('by-key', 'fault.responses-alike', names)]
      : []),
    ...(misleads(one, other) || misleads(other, one)
      ? [told('by-key', 'fault.gets-other', names)]
      : []),
  ];
}

/** Signs and textures differ by name: lines are told apart upright and level, as the hand draws them. */
function responsesAlike(one: Response, other: Response): boolean {
  if (one.kind === 'sign') return other.kind === 'sign' && one.sign === other.sign;
  if (one.kind === 'fill') return other.kind === 'fill' && one.texture === other.texture;
  if (other.kind === 'sign' || other.kind === 'fill') return false;
  return !fairlyDifferent({ colour: one.colour }, { colour: other.colour });
}

/** Whether what one entry gets looks like the figure of the other. */
function misleads({ response }: Entry, { figure }: Entry): boolean {
  if (response.kind === 'sign') return TAKEN_FOR[response.sign].includes(formOf(figure));
  if (response.kind === 'fill') return figure.fill === response.texture;
  const colour = filledColour(figure);
  return colour !== undefined && !fairlyDifferent({ colour }, { colour: response.colour });
}
