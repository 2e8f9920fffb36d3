// What cannot be asked for together, and why: each refusal names the parameter and what would do.
import type { Refusal } from '../../base/index.ts';
import {
  attributesOf,
  type ContentId,
  contentName,
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
function responseFault(content: ContentId, response: Response): string | undefined {
  const isOfColours = content === 'colours';
  switch (response) {
    case 'sticker':
    case 'counters':
      return isOfColours ? undefined : 'round stickers and counters match nothing but a colour';
    case 'colour-in':
      return isOfColours ? undefined : 'an outline to colour in would give away what is missing';
    case 'draw':
      if (isOfColours) return 'only the colour is asked for, and that is coloured in';
      return formsOf(content).some(isPicture)
        ? 'no child can draw these pictures apart'
        : undefined;
    case 'cut':
      return attributesOf(content).includes('size')
        ? 'pieces of several sizes have no room beside the grid'
        : undefined;
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
  const because = `${contentName(content)} allow for no more that can be told apart fairly`;
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
    because: `blocks of two by two need ${BOXED_ORDER} rows and columns`,
  };
}

function logicRefusal(values: SquareValues): Refusal | undefined {
  const possible = logicsOf(values);
  if (possible.includes(values.logic)) return undefined;
  const because = `no grid of ${values.order} rows and columns needs it`;
  return refusal('logic', values.logic, possible, possible.at(-1) ?? 'one-gap', because);
}

function chainRefusal(values: SquareValues): Refusal | undefined {
  if (emptyRange(values)) return undefined;
  const because = 'where figures are found by what is elsewhere, one always follows upon another';
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
      ? 'fewer empty cells never need so much thought'
      : got <= max
        ? 'more pieces have no room below the grid'
        : 'with more empty cells the grid needs more thought than was asked for, or cannot be told';
  return { code: 'out-of-range', at: at('empty'), got, min, max: most, because };
}

function refusal(
  name: keyof SquareValues,
  got: string,
  choices: readonly string[],
  nearest: string,
  because: string,
): Refusal {
  return { code: 'not-a-choice', at: at(name), got, choices, nearest, because };
}

function at(name: keyof SquareValues): string {
  return `${ID} › ${name}`;
}
