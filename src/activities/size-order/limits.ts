// What cannot be asked for together, and why: each refusal names the parameter and the nearest that would do.
import { type Refusal, type Told, told } from '../../base/index.ts';
import { attributesOf, mostCounts } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { shortOfColours } from '../colours-at-hand.ts';
import { COUNT_RATIO } from './generate-sizes.ts';
import { type Asked, ID, type OrderValues, PARAMETERS, type Response } from './task.ts';

/** What a whole order can be answered with, and one figure. */
const ORDER_RESPONSES: readonly Response[] = ['point', 'dots', 'join', 'cut'];
const ONE_RESPONSES: readonly Response[] = ['point', 'ring'];
const ONE_ASKED: readonly Asked[] = ['biggest', 'smallest', 'middle'];

/** A frame for more cards is wider than a page. */
const MOST_CUT = 4;

/** Empty where the values are valid; of two that do not go together both are named, since either may change. */
export function limitsOf(values: OrderValues, style: PrintStyle): readonly Refusal[] {
  const refusals = [...responseRefusals(values), ...figuresRefusals(values)];
  const colours = coloursRefusal(values, style);
  return colours ? [...refusals, colours] : refusals;
}

/** Each figure has a colour of its own. */
function coloursRefusal({ content, figures }: OrderValues, style: PrintStyle): Refusal | undefined {
  return attributesOf(content).includes('colour') ? shortOfColours(ID, figures, style) : undefined;
}

function responseRefusals({ asked, response }: OrderValues): readonly Refusal[] {
  const isOrder = asked === 'order';
  const fitting = isOrder ? ORDER_RESPONSES : ONE_RESPONSES;
  if (fitting.includes(response)) return [];
  const because = isOrder ? told('size-order', 'no.ring') : told('size-order', 'no.one');
  const other = isOrder ? ONE_ASKED : (['order'] as const);
  return [
    refusal('asked', asked, other, other[0] ?? 'order', because),
    refusal('response', response, fitting, isOrder ? 'join' : 'ring', because),
  ];
}

function figuresRefusals(values: OrderValues): readonly Refusal[] {
  const { asked, figures: got } = values;
  const most = mostFigures(values);
  const { min } = PARAMETERS.figures;
  if (got > most.count) {
    const { count: max, because } = most;
    return [{ code: 'out-of-range', at: at('figures'), got, min, max, because }];
  }
  if (asked !== 'middle' || got % 2 === 1) return [];
  const because = told('size-order', 'no.even');
  const odd = most.count >= 5 ? ['3', '5'] : ['3'];
  return [
    { code: 'not-a-choice', at: at('figures'), got, choices: odd, nearest: '3', because },
    refusal('asked', asked, ['biggest', 'smallest'], 'biggest', because),
  ];
}

interface Most {
  readonly count: number;
  readonly because: Told;
}

function mostFigures({ content, response, difference }: OrderValues): Most {
  const { max } = PARAMETERS.figures;
  const toStick = response === 'cut' ? MOST_CUT : max;
  const dots = content === 'dot-quantities' ? mostCounts(COUNT_RATIO[difference]) : max;
  return dots < toStick
    ? { count: dots, because: told('size-order', 'no.dots') }
    : { count: toStick, because: told('size-order', 'no.frame') };
}

function refusal(
  name: keyof OrderValues,
  got: string,
  choices: readonly string[],
  nearest: string,
  because: Told,
): Refusal {
  return { code: 'not-a-choice', at: at(name), got, choices, nearest, because };
}

function at(name: keyof OrderValues): string {
  return `${ID} › ${name}`;
}
