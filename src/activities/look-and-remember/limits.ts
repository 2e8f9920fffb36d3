// What cannot be asked for together, and why: each refusal names the parameter and the nearest that would do.
import { type Refusal, told } from '../../base/index.ts';
import { attributesOf } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { againCount, looksFor, wrongCount } from './generate-looks.ts';
import { ID, PARAMETERS, type RememberValues } from './task.ts';

/** Figures of several sizes need larger cells, of which fewer have room above and below the fold. */
const MOST_SIZED = { set: 4, choices: 8 };

/** Empty where the values are valid; of numbers that depend on each other the first that fails is named. */
export function limitsOf(values: RememberValues, style: PrintStyle): readonly Refusal[] {
  const refusal =
    rangeRefusal('set', values, (set) => choicesFor({ ...values, set }, style).length > 0) ??
    rangeRefusal('choices', values, (choices) => choicesFor(values, style).includes(choices)) ??
    nearMissesRefusal(values, style);
  return refusal ? [refusal] : [];
}

/** Refuses a number outside the range of those that would do, which are neighbours. */
function rangeRefusal(
  name: 'set' | 'choices',
  values: RememberValues,
  isPossible: (value: number) => boolean,
): Refusal | undefined {
  const got = values[name];
  const { min, max } = PARAMETERS[name];
  const possible = numbersFrom(min, max).filter(isPossible);
  if (possible.includes(got)) return undefined;
  const because =
    got < Math.min(...possible)
      ? told('look-and-remember', 'no.one-new')
      : told('look-and-remember', 'no.memory', { content: { content: values.content } });
  return {
    code: 'out-of-range',
    at: at(name),
    got,
    min: Math.min(...possible),
    max: Math.max(...possible),
    because,
  };
}

/** Every number of choices that leaves a wrong one and does not need more wrong ones than there are. */
function choicesFor(values: RememberValues, style: PrintStyle): readonly number[] {
  const { content, set } = values;
  const isSized = attributesOf(content).includes('size');
  const looks = looksFor(content, set, style);
  if (!looks || (isSized && set > MOST_SIZED.set)) return [];
  const most = againCount(values) + looks.near.length + looks.far.length;
  const { min, max } = PARAMETERS.choices;
  return numbersFrom(
    Math.max(min, againCount(values) + 1),
    Math.min(most, isSized ? MOST_SIZED.choices : max),
  );
}

/** Of one attribute nothing is asked here: every wrong choice differs in that one. */
function nearMissesRefusal(values: RememberValues, style: PrintStyle): Refusal | undefined {
  const { content, set, nearMisses: got } = values;
  const looks = looksFor(content, set, style);
  if (attributesOf(content).length === 1 || !looks) return undefined;
  const wrong = wrongCount(values);
  const min = Math.max(0, wrong - looks.far.length);
  const max = Math.min(wrong, looks.near.length);
  if (got >= min && got <= max) return undefined;
  const because =
    got > max
      ? told('look-and-remember', 'no.near-most', { choices: values.choices, most: max })
      : told('look-and-remember', 'no.near-least');
  return { code: 'out-of-range', at: at('nearMisses'), got, min, max, because };
}

function numbersFrom(min: number, max: number): readonly number[] {
  return Array.from({ length: Math.max(0, max - min + 1) }, (_, index) => min + index);
}

function at(name: keyof RememberValues): string {
  return `${ID} › ${name}`;
}
