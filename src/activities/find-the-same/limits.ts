// What cannot be asked for together, and why: each refusal names the parameter and the nearest that would do.
import { type Refusal, told } from '../../base/index.ts';
import { attributesOf } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { FIGURE_COLOURS } from '../../palette/index.ts';
import { shortOfColours } from '../colours-at-hand.ts';
import { isArrangeable } from './arrangement.ts';
import { limitsOfAttributes } from './attribute-limits.ts';
import { ID, PARAMETERS, type SameValues } from './task.ts';

/** A row of more has no room beside its model, even on a page that lies. */
const MOST_IN_ROW = 6;

/** Empty where the values are valid; of numbers that depend on each other the first that fails is named. */
export function limitsOf(values: SameValues, style: PrintStyle): readonly Refusal[] {
  const number = choicesRefusal(values, style) ?? nearMissesRefusal(values);
  const enough = number ?? coloursRefusal(values, style);
  return [mirrorsRefusal(values), layoutRefusal(values), enough].filter(
    (refusal) => refusal !== undefined,
  );
}

function mirrorsRefusal({ content, mirrors }: SameValues): Refusal | undefined {
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

function layoutRefusal({ layout, choices }: SameValues): Refusal | undefined {
  if (layout !== 'row' || choices <= MOST_IN_ROW) return undefined;
  return {
    code: 'not-a-choice',
    at: at('layout'),
    got: layout,
    choices: ['grid'],
    nearest: 'grid',
    because: told('reasons', 'row', { most: MOST_IN_ROW }),
  };
}

/** Where all differ from each other in everything, there are no more choices than values. */
function choicesRefusal(values: SameValues, style: PrintStyle): Refusal | undefined {
  const { content, choices, mixed, nearMisses } = values;
  const attributes = limitsOfAttributes(values, style);
  const areAllUnlike = mixed && (attributes.length === 1 || isUnlikeInBoth(values));
  const most = Math.min(...attributes.map((attribute) => attribute.most));
  if (!areAllUnlike || choices <= most) return undefined;
  const why =
    attributes.length === 1 || nearMisses > 0
      ? told('reasons', 'content', { content: { content } })
      : told('find-the-same', 'no.both-ways', { content: { content } });
  const { min, max } = PARAMETERS.choices;
  return {
    code: 'out-of-range',
    at: at('choices'),
    got: choices,
    min,
    max: Math.min(max, most),
    because: why,
  };
}

/** With few colours there may not be so many different wrong choices. */
function coloursRefusal(values: SameValues, style: PrintStyle): Refusal | undefined {
  const { content, choices, nearMisses, mixed } = values;
  if (!attributesOf(content).includes('colour')) return undefined;
  const most = limitsOfAttributes(values, style).map((limit) => limit.most);
  const isEnough = isArrangeable({ most, wrong: choices - 1, nearMisses, mixed });
  return isEnough ? undefined : shortOfColours(ID, FIGURE_COLOURS.length, style);
}

function isUnlikeInBoth({ content, nearMisses }: SameValues): boolean {
  return attributesOf(content).length === 2 && nearMisses === 0;
}

/** Of one attribute nothing is asked here: every wrong choice differs from the model in that one. */
function nearMissesRefusal(values: SameValues): Refusal | undefined {
  const { content, choices, nearMisses, mixed, mirrors } = values;
  if (attributesOf(content).length === 1) return undefined;
  const max = choices - 1;
  const min = mirrors === 'none' ? 0 : 1;
  if (nearMisses < min || nearMisses > max) {
    const because =
      nearMisses > max
        ? told('find-the-same', 'no.near-most', { choices, wrong: max })
        : told('find-the-same', 'no.near-least');
    return { code: 'out-of-range', at: at('nearMisses'), got: nearMisses, min, max, because };
  }
  if (mixed || nearMisses === 0 || nearMisses === max) return undefined;
  return {
    code: 'not-a-choice',
    at: at('nearMisses'),
    got: nearMisses,
    choices: [...(min === 0 ? ['0'] : []), String(max)],
    nearest: String(max),
    because: told('find-the-same', 'no.near-all'),
  };
}

function at(name: keyof SameValues): string {
  return `${ID} › ${name}`;
}
