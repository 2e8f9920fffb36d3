// What cannot be asked for together, and why: each refusal names the parameter and the nearest that would do.
import { type Refusal, type Told, told } from '../../base/index.ts';
import { attributesOf } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { shortOfColours } from '../colours-at-hand.ts';
import { COURSES, poolsOf, ruleOf } from './rules.ts';
import { ID, PARAMETERS, type PartValues } from './task.ts';

/** Rows in which four in turn are seen twice, and a rule is seen beside a hole of several figures. */
const LEAST_FOR_MORE = 4;
/** With more rows there is no room for pieces of four figures. */
const MOST_BESIDE_FOUR = 4;

/** Empty where the values are valid. */
export function limitsOf(values: PartValues, style: PrintStyle): readonly Refusal[] {
  return [
    ruleRefusal(values, style),
    secondRefusal(values),
    holeRefusal(values),
    fieldRefusal(values),
    choicesRefusal(values, style),
    coloursRefusal(values, style),
  ].filter((refusal) => refusal !== undefined);
}

function ruleRefusal({ content, rule }: PartValues, style: PrintStyle): Refusal | undefined {
  const most = Math.min(...poolsOf(content, style));
  if (COURSES[rule].kinds <= most) return undefined;
  const choices = PARAMETERS.rule.values.filter((other) => COURSES[other].kinds <= most);
  const because = told('missing-part', 'no.rule', { content: { content }, most });
  return notAChoice('rule', rule, choices, 'diagonal', because);
}

function secondRefusal({ content, second }: PartValues): Refusal | undefined {
  if (second === 'same' || attributesOf(content).length > 1) return undefined;
  const because = told('missing-part', 'no.one-thing', { content: { content } });
  return notAChoice('second', second, ['same'], 'same', because);
}

function holeRefusal({ response, hole, field }: PartValues): Refusal | undefined {
  if (hole === 'one') return undefined;
  if (response === 'draw') {
    return notAChoice('hole', hole, ['one'], 'one', told('missing-part', 'no.draw'));
  }
  if (field >= LEAST_FOR_MORE) return undefined;
  return notAChoice('hole', hole, ['one'], 'one', told('missing-part', 'no.hole'));
}

function fieldRefusal({ rule, hole, field: got }: PartValues): Refusal | undefined {
  const at = `${ID} › field`;
  const isSmall = rule !== 'tiles' && hole === 'one';
  const min = isSmall ? PARAMETERS.field.min : LEAST_FOR_MORE;
  const max = hole === 'four' ? MOST_BESIDE_FOUR : PARAMETERS.field.max;
  if (rule === 'tiles' && got < min) {
    return { code: 'out-of-range', at, got, min, max, because: told('missing-part', 'no.tiles') };
  }
  if (got <= max) return undefined;
  return { code: 'out-of-range', at, got, min, max, because: told('missing-part', 'no.pieces') };
}

/** Each attribute needs as many values as its own rule has. */
function coloursRefusal(values: PartValues, style: PrintStyle): Refusal | undefined {
  const needed = attributesOf(values.content).map((attribute, axis) =>
    attribute === 'colour' ? COURSES[ruleOf(values, axis)].kinds : 0,
  );
  return shortOfColours(ID, Math.max(...needed), style);
}

/** Of one attribute there are no more pieces than values. */
function choicesRefusal({ content, choices }: PartValues, style: PrintStyle): Refusal | undefined {
  const pools = poolsOf(content, style);
  const most = pools.reduce((product, pool) => product * pool, 1);
  if (choices <= most) return undefined;
  const { min } = PARAMETERS.choices;
  const because = told('reasons', 'content', { content: { content } });
  return {
    code: 'out-of-range',
    at: `${ID} › choices`,
    got: choices,
    min,
    max: most,
    because,
  };
}

function notAChoice(
  name: keyof PartValues,
  got: string,
  choices: readonly string[],
  nearest: string,
  because: Told,
): Refusal {
  return { code: 'not-a-choice', at: `${ID} › ${name}`, got, choices, nearest, because };
}
