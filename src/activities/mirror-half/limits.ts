// What cannot be asked for together, and why: each refusal names the parameter and the nearest that would do.
import { type Refusal, randomFrom } from '../../base/index.ts';
import { contentName } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { asPrinted } from './generate.ts';
import { drawKinds, mostKinds } from './generate-kinds.ts';
import { findPattern, gridOf } from './generate-pattern.ts';
import { fitsPaper } from './measures.ts';
import {
  type Axis,
  ID,
  isChosen,
  type MirrorValues,
  PARAMETERS,
  type Printed,
  type Response,
} from './task.ts';

const COLOUR = { print: 'colour' } as const;

/** Empty where the values are valid; of those that depend on each other the first that fails is named. */
export function limitsOf(values: MirrorValues, style: PrintStyle): readonly Refusal[] {
  const checks = [
    responseRefusal,
    axisRefusal,
    kindsRefusal,
    elementsRefusal,
    choicesRefusal,
    paperRefusal,
  ];
  for (const check of checks) {
    const refusal = check(values, style);
    if (refusal) return [refusal];
  }
  return [];
}

/** What suits a content, the likest first. */
function responsesFor(content: MirrorValues['content']): readonly Response[] {
  if (content === 'colours') return ['sticker', 'colour-in', 'point', 'ring'];
  return content === 'pictures' ? ['point', 'ring'] : ['draw', 'point', 'ring'];
}

function responseRefusal({ content, response }: MirrorValues): Refusal | undefined {
  const choices = responsesFor(content);
  if (choices.includes(response)) return undefined;
  const nearest = response === 'draw' && content === 'colours' ? 'colour-in' : choices[0];
  const reasons = {
    draw:
      content === 'pictures'
        ? 'no child can draw these pictures again'
        : 'only the colour is asked for, and that is coloured in',
    sticker: 'a dot sticker can match nothing but a colour',
    'colour-in': 'filling a cell can match nothing but a colour',
    point: '',
    ring: '',
  };
  return notAChoice('response', response, choices, nearest, reasons[response]);
}

function axisRefusal(
  { content, response, axis }: MirrorValues,
  style: PrintStyle,
): Refusal | undefined {
  const because = axisFault(content, response, axis, style);
  if (because === undefined) return undefined;
  const choices = PARAMETERS.axis.values.filter(
    (other) => axisFault(content, response, other, style) === undefined,
  );
  const nearest = axis === 'both' && choices.includes('level') ? 'level' : choices[0];
  return notAChoice('axis', axis, choices, nearest, because);
}

function axisFault(
  content: MirrorValues['content'],
  response: Response,
  axis: Axis,
  style: PrintStyle,
): string | undefined {
  if (mostKinds(content, axis, style) === 0) {
    return `no ${contentName(content)} look the same in this mirror`;
  }
  const isOffered = axis === 'both' && isChosen(response);
  return isOffered ? 'three quarters are missing, and only a half can be chosen' : undefined;
}

function kindsRefusal(
  { content, axis, elements, kinds }: MirrorValues,
  style: PrintStyle,
): Refusal | undefined {
  const most = mostKinds(content, axis, style);
  const max = Math.min(most, elements);
  if (kinds <= max) return undefined;
  const because =
    max === most
      ? `only so many ${contentName(content)} look the same in this mirror`
      : 'each different figure needs a place';
  return outOfRange('kinds', kinds, 1, max, because);
}

function elementsRefusal(values: MirrorValues): Refusal | undefined {
  const hasOne = (elements: number) =>
    findPattern({ ...values, elements }, randomFrom(0)) !== undefined;
  if (hasOne(values.elements)) return undefined;
  const { min, max } = PARAMETERS.elements;
  const possible = Array.from({ length: max - min + 1 }, (_, index) => min + index).filter(hasOne);
  const nearest = possible.reduce((best, next) =>
    Math.abs(next - values.elements) < Math.abs(best - values.elements) ? next : best,
  );
  const because = 'any other would look right shifted or turned as well';
  return notAChoice('elements', values.elements, possible.map(String), String(nearest), because);
}

/** In four places three of one kind leave one place free, so that hardly anything can be wrong. */
function choicesRefusal(values: MirrorValues): Refusal | undefined {
  const { response, deep, along, elements, kinds, choices, wrong } = values;
  const isNarrow = deep * along === 4 && elements === 3 && kinds === 1;
  const max = isNarrow ? { far: 2, near: 2, turned: 3, copied: 4 }[wrong] : PARAMETERS.choices.max;
  if (!isChosen(response) || choices <= max) return undefined;
  return outOfRange('choices', choices, 2, max, 'there are no more ways to be wrong');
}

/** The first of the numbers of places that makes the task small enough, where it is too large for paper. */
function paperRefusal(values: MirrorValues): Refusal | undefined {
  if (fitsPaper(sketchOf(values))) return undefined;
  for (const name of ['along', 'deep'] as const) {
    const { min } = PARAMETERS[name];
    for (let max = values[name] - 1; max >= min; max--) {
      if (fitsPaper(sketchOf({ ...values, [name]: max }))) {
        return outOfRange(name, values[name], min, max, 'more places have no room on a page');
      }
    }
  }
  return outOfRange('deep', values.deep, 2, values.deep - 1, 'more places have no room on a page');
}

/** A task as large as any of these values: the kinds alone say how large its cells are. */
function sketchOf(values: MirrorValues): Printed {
  const { content, axis, kinds, given, response, choices } = values;
  const grid = gridOf(values);
  const drawn = drawKinds(content, axis, kinds, randomFrom(0), COLOUR);
  const cells = Array.from({ length: grid.rows * grid.columns }, (_, place) => {
    const kind = drawn[place];
    return kind ? asPrinted(kind, values) : null;
  });
  const offered = Array.from({ length: choices }, () => ({ cells }));
  return {
    part: { ...grid, cells },
    axis,
    given,
    response,
    ...(isChosen(response) ? { offered } : {}),
    ...(response === 'sticker' ? { stickerMm: Number(values.stickerMm) } : {}),
  };
}

function outOfRange(
  name: keyof MirrorValues,
  got: number,
  min: number,
  max: number,
  because: string,
): Refusal {
  return { code: 'out-of-range', at: `${ID} › ${name}`, got, min, max, because };
}

function notAChoice(
  name: keyof MirrorValues,
  got: string | number,
  choices: readonly string[],
  nearest: string | undefined,
  because: string,
): Refusal {
  const base = { code: 'not-a-choice', at: `${ID} › ${name}`, got, choices, because } as const;
  return nearest === undefined ? base : { ...base, nearest };
}
