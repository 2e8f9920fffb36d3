// What cannot be asked for together, with the nearest that can: suiting responses, models that exist, boxes that differ.
import { type Refusal, randomFrom, type Told, told } from '../../base/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { shortOfColours } from '../colours-at-hand.ts';
import { mostKinds } from './contents.ts';
import { waysToGive } from './givens.ts';
import { findPattern } from './models.ts';
import { type CopyValues, GIVENS, PARAMETERS, responsesOf, SYMMETRIES } from './parameters.ts';

const AT = 'copy-pattern';

/** Every reason why the values do not go together; none for values that `generate` accepts. */
export function limitsOf(values: CopyValues, style: PrintStyle): readonly Refusal[] {
  const own = [
    ...responseRefusals(values),
    ...kindRefusals(values, style),
    ...inkRefusals(values, style),
    ...slantRefusals(values),
    ...givenRefusals(values),
  ];
  if (own.length > 0) return own;
  const patterns = patternRefusals(values);
  return patterns.length > 0 ? patterns : boxRefusals(values);
}

function responseRefusals({ content, response }: CopyValues): readonly Refusal[] {
  const suiting = responsesOf(content);
  if (suiting.includes(response)) return [];
  return [
    choiceRefusal('response', response, suiting, suiting[0], told('copy-pattern', 'no.response')),
  ];
}

function kindRefusals(
  { content, kinds, elements }: CopyValues,
  style: PrintStyle,
): readonly Refusal[] {
  const most = mostKinds(content, style);
  const max = Math.min(most, elements);
  if (kinds <= max) return [];
  const because = kinds > most ? KINDS_BECAUSE[content] : told('copy-pattern', 'no.kinds');
  return [
    {
      code: 'out-of-range',
      at: `${AT} › kinds`,
      got: kinds,
      min: 1,
      max,
      ...(because === undefined ? {} : { because }),
    },
  ];
}

/** Dots of ink are coloured in black. */
function inkRefusals({ content, response }: CopyValues, style: PrintStyle): readonly Refusal[] {
  if (content !== 'dots' || response !== 'colour-in') return [];
  const refusal = shortOfColours(AT, 1, style, ['black']);
  return refusal ? [refusal] : [];
}

const KINDS_BECAUSE: Readonly<Partial<Record<CopyValues['content'], Told>>> = {
  dots: told('copy-pattern', 'no.dots'),
  lines: told('copy-pattern', 'no.lines'),
  directions: told('copy-pattern', 'no.left-right'),
};

function slantRefusals({ content, slanted }: CopyValues): readonly Refusal[] {
  if (!slanted || content === 'lines') return [];
  return [
    choiceRefusal('slanted', slanted, ['false'], 'false', told('copy-pattern', 'no.slanted')),
  ];
}

function givenRefusals({ givens, elements }: CopyValues): readonly Refusal[] {
  if (givens === 'none' || elements > 1) return [];
  return [
    choiceRefusal('givens', givens, [GIVENS[0]], GIVENS[0], told('copy-pattern', 'no.single')),
  ];
}

/** Names the numbers of elements that have a model, or, where none has, the symmetries that have one. */
function patternRefusals(values: CopyValues): readonly Refusal[] {
  if (hasPattern(values)) return [];
  const because = modelInWords(values);
  const elements = elementNumbers(values);
  if (elements.length > 0) return [elementsRefusal(values.elements, elements, because)];
  const symmetries = SYMMETRIES.filter(
    (symmetry) => elementNumbers({ ...values, symmetry }).length > 0,
  );
  const nearest = symmetries.find((symmetry) => hasPattern({ ...values, symmetry }));
  return [
    choiceRefusal('symmetry', values.symmetry, symmetries, nearest ?? symmetries[0], because),
  ];
}

function hasPattern(values: CopyValues): boolean {
  return findPattern(values, randomFrom(0)) !== undefined;
}

/** Every number of elements that has a model with the other values as they are. */
function elementNumbers(values: CopyValues): readonly number[] {
  const { min, max } = PARAMETERS.elements;
  return Array.from({ length: max - min + 1 }, (_, index) => min + index).filter((elements) =>
    hasPattern({ ...values, elements }),
  );
}

function elementsRefusal(got: number, allowed: readonly number[], because: Told): Refusal {
  const [min, max] = [Math.min(...allowed), Math.max(...allowed)];
  if (max - min + 1 === allowed.length) {
    return { code: 'out-of-range', at: `${AT} › elements`, got, min, max, because };
  }
  const nearest = allowed.reduce((best, next) =>
    Math.abs(next - got) < Math.abs(best - got) ? next : best,
  );
  return choiceRefusal('elements', got, allowed.map(String), String(nearest), because);
}

function modelInWords(values: CopyValues): Told {
  const { content, rows, columns, kinds, symmetry, joined, slanted } = values;
  const lines = slanted ? 'slanted' : 'straight';
  const likeness = {
    ...{ rows, columns, symmetry, kinds },
    ...{ lines: content === 'lines' ? lines : 'none', joined: joined ? 'yes' : 'no' },
  };
  return told('copy-pattern', 'no.model', likeness);
}

function boxRefusals(values: CopyValues): readonly Refusal[] {
  const max = Math.min(waysToGive(values), PARAMETERS.boxes.max);
  if (values.givens === 'none' || values.boxes <= max) return [];
  const because = told('copy-pattern', 'no.boxes');
  return [{ code: 'out-of-range', at: `${AT} › boxes`, got: values.boxes, min: 1, max, because }];
}

function choiceRefusal(
  name: keyof CopyValues,
  got: string | number | boolean,
  choices: readonly string[],
  nearest: string | undefined,
  because: Told,
): Refusal {
  const base = { code: 'not-a-choice', at: `${AT} › ${name}`, got, choices, because } as const;
  return nearest === undefined ? base : { ...base, nearest };
}
