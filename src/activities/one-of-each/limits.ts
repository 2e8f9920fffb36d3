// What cannot be asked for together, and why: each refusal names the parameter and what would do.
import { type Refusal, type Told, told } from '../../base/index.ts';
import {
  attributesOf,
  type ContentId,
  formsOf,
  isPicture,
  mostValues,
} from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { FEWEST, ID, MOST, PARAMETERS, type Response, type SquareValues } from './task.ts';
import { emptyRange, logicsOf } from './ways.ts';

/** Up, down and one side: left and right never stand in one grid. */
const MOST_DIRECTIONS = 3;
/** Five sizes, the smallest large enough to see, have no room across a page. */
const MOST_SIZES = 4;
/** Two rows of pieces, as many as have room across a page. */
const MOST_PIECES = 14;
/** Blocks of two by two divide a grid of this order only. */
const BOXED_ORDER = 4;

/** Empty where the values are valid; of values that depend on each other the first that fails is named. */
export function limitsOf(values: SquareValues, style: PrintStyle): readonly Refusal[] {
  const first = [
    () => responseRefusal(values),
    () => orderRefusal(values, style),
    () => boxesRefusal(values),
    () => logicRefusal(values),
    () => chainRefusal(values),
    () => emptyRefusal(values),
  ];
  for (const check of first) {
    const refusal = check();
    if (refusal) return [refusal];
  }
  return [];
}

/** What to offer instead, the likest first. */
const NEAREST: Readonly<Record<Response, readonly Response[]>> = {
  sticker: ['cut', 'draw', 'point'],
  counters: ['cut', 'draw', 'point'],
  'colour-in': ['draw', 'cut', 'point'],
  draw: ['colour-in', 'cut', 'point'],
  cut: ['draw', 'point'],
  point: [],
};

function responseRefusal({ content, response }: SquareValues): Refusal | undefined {
  const because = responseFault(content, response);
  if (because === undefined) return undefined;
  const possible = PARAMETERS.response.values.filter(
    (one) => responseFault(content, one) === undefined,
  );
  const nearest = NEAREST[response].find((one) => possible.includes(one)) ?? 'point';
  return refusal('response', response, possible, nearest, because);
}

/** In grey print each dot carries the mark of its colour, which tells its sticker, counter or crayon. */
function responseFault(content: ContentId, response: Response): Told | undefined {
  const isOfColours = content === 'colours';
  switch (response) {
    case 'sticker':
    case 'counters':
      return isOfColours ? undefined : told('one-of-each', 'no.sticker');
    case 'colour-in':
      return isOfColours ? undefined : told('reasons', 'outline');
    case 'draw':
      if (isOfColours) return told('reasons', 'only-colour');
      return formsOf(content).some(isPicture) ? told('reasons', 'pictures') : undefined;
    case 'cut':
      return attributesOf(content).includes('size') ? told('one-of-each', 'no.cut') : undefined;
    default:
      return undefined;
  }
}

function orderRefusal(
  { content, order: got }: SquareValues,
  style: PrintStyle,
): Refusal | undefined {
  const max = Math.min(
    ...attributesOf(content).map((attribute) => {
      const most = mostValues(content, attribute, style);
      if (attribute === 'turn') return Math.min(most, MOST_DIRECTIONS);
      return attribute === 'size' ? Math.min(most, MOST_SIZES) : Math.min(most, MOST);
    }),
  );
  if (got <= max) return undefined;
  const because = told('one-of-each', 'no.order', { content: { content } });
  return { code: 'out-of-range', at: at('order'), got, min: FEWEST, max, because };
}

function boxesRefusal({ boxes, order }: SquareValues): Refusal | undefined {
  if (!boxes || order === BOXED_ORDER) return undefined;
  return {
    code: 'not-a-choice',
    at: at('boxes'),
    got: true,
    choices: ['false'],
    nearest: 'false',
    because: told('one-of-each', 'no.blocks', { order: BOXED_ORDER }),
  };
}

function logicRefusal(values: SquareValues): Refusal | undefined {
  const possible = logicsOf(values);
  if (possible.includes(values.logic)) return undefined;
  const because = told('one-of-each', 'no.logic', { order: values.order });
  return refusal('logic', values.logic, possible, possible.at(-1) ?? 'one-gap', because);
}

function chainRefusal(values: SquareValues): Refusal | undefined {
  if (emptyRange(values)) return undefined;
  const because = told('one-of-each', 'no.chain');
  return {
    code: 'not-a-choice',
    at: at('chain'),
    got: values.chain,
    choices: [String(!values.chain)],
    nearest: String(!values.chain),
    because,
  };
}

function emptyRefusal(values: SquareValues): Refusal | undefined {
  const { empty: got, response } = values;
  const { min, max } = emptyRange(values) ?? PARAMETERS.empty;
  const most = response === 'cut' ? Math.min(max, MOST_PIECES) : max;
  if (got >= min && got <= most) return undefined;
  const because =
    got < min
      ? told('one-of-each', 'no.empty-least')
      : got <= max
        ? told('one-of-each', 'no.empty-pieces')
        : told('one-of-each', 'no.empty-most');
  return { code: 'out-of-range', at: at('empty'), got, min, max: most, because };
}

function refusal(
  name: keyof SquareValues,
  got: string,
  choices: readonly string[],
  nearest: string,
  because: Told,
): Refusal {
  return { code: 'not-a-choice', at: at(name), got, choices, nearest, because };
}

function at(name: keyof SquareValues): string {
  return `${ID} › ${name}`;
}
