// What cannot be asked for together, and why: each refusal names the parameter and the nearest that would do.
import { type Refusal, told } from '../../base/index.ts';
import { attributesOf } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { FIGURE_COLOURS } from '../../palette/index.ts';
import { shortOfColours } from '../colours-at-hand.ts';
import { checkedAxes, idleAxes } from './axes.ts';
import { differentRange, leastPairs } from './counts.ts';
import { ID, PARAMETERS, type PairValues } from './task.ts';

/** So many pairs of one kind, differing or not, stand on a page at most. */
const MOST_ALIKE = 5;

/** Empty where the values are valid; else the first thing that does not go. */
export function limitsOf(values: PairValues, style: PrintStyle): readonly Refusal[] {
  const refusal =
    mirrorsRefusal(values) ?? coloursRefusal(values, style) ?? pairsRefusal(values, style);
  return refusal === undefined ? [] : [refusal];
}

function mirrorsRefusal({ content, mirrors }: PairValues): Refusal | undefined {
  if (mirrors === 'none' || attributesOf(content).includes('turn')) return undefined;
  return {
    code: 'not-a-choice',
    at: at('mirrors'),
    got: mirrors,
    choices: ['none'],
    nearest: 'none',
    because: told('reasons', 'mirrors'),
  };
}

/** Where colour is checked two must differ; else all figures may have one. */
function coloursRefusal(values: PairValues, style: PrintStyle): Refusal | undefined {
  if (!attributesOf(values.content).includes('colour')) return undefined;
  const checked = checkedAxes(values, style).find(({ attribute }) => attribute === 'colour');
  const most = FIGURE_COLOURS.length;
  const needed = checked ? (checked.candidates.length > 0 ? 2 : most) : 1;
  return shortOfColours(ID, needed, style);
}

/** No two boxes may hold the same two figures; each checked attribute needs a pair that differs in it. */
function pairsRefusal(values: PairValues, style: PrintStyle): Refusal | undefined {
  const { content, pairs } = values;
  const min = leastPairs(values);
  const max = mostPairs(values, style);
  if (pairs >= min && pairs <= max) return undefined;
  const because =
    pairs < min
      ? told('same-or-different', 'no.pairs-least')
      : told('same-or-different', 'no.pairs-most', { content: { content } });
  return { code: 'out-of-range', at: at('pairs'), got: pairs, min, max, because };
}

function mostPairs(values: PairValues, style: PrintStyle): number {
  const axes = checkedAxes(values, style);
  const [first] = axes;
  const isIdle = idleAxes(values, style).some((axis) => axis.values.length >= MOST_ALIKE);
  const isVaried = axes.length > 1 || (values.idle && isIdle);
  let most = PARAMETERS.pairs.max;
  if (isVaried || !first) return most;
  const fits = (pairs: number) => {
    const { min, max } = differentRange({ ...values, pairs });
    return max <= first.candidates.length && pairs - min <= first.values.length;
  };
  while (most > PARAMETERS.pairs.min && !fits(most)) most -= 1;
  return most;
}

function at(name: keyof PairValues): string {
  return `${ID} › ${name}`;
}
