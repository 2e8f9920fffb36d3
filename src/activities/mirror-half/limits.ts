// What cannot be asked for together, and why: each refusal names the parameter and the nearest that would do.
import { type Refusal, randomFrom, type Told, told } from '../../base/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { fitsUpright } from '../upright-room.ts';
import { asPrinted } from './generate.ts';
import { drawKinds, mostKinds } from './generate-kinds.ts';
import { findPattern, gridOf } from './generate-pattern.ts';
import { leastSize } from './measures.ts';
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
      content === 'pictures' ? told('mirror-half', 'no.pictures') : told('reasons', 'only-colour'),
    sticker: told('reasons', 'sticker-colour'),
    'colour-in': told('mirror-half', 'no.colour-in'),
    point: told('mirror-half', 'no.wrong'),
    ring: told('mirror-half', 'no.wrong'),
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
  if (choices.length === 0) return contentRefusal(content, axis, because, style);
  const nearest = axis === 'both' && choices.includes('level') ? 'level' : choices[0];
  return notAChoice('axis', axis, choices, nearest, because);
}

/** Where no mirror leaves any figure as it looks, such as own pictures alone, something else must be mirrored. */
function contentRefusal(
  content: MirrorValues['content'],
  axis: Axis,
  because: Told,
  style: PrintStyle,
): Refusal {
  const choices = PARAMETERS.content.values.filter((other) => mostKinds(other, axis, style) > 0);
  const nearest = choices.includes('shapes') ? 'shapes' : choices[0];
  return notAChoice('content', content, choices, nearest, because);
}

function axisFault(
  content: MirrorValues['content'],
  response: Response,
  axis: Axis,
  style: PrintStyle,
): Told | undefined {
  if (mostKinds(content, axis, style) === 0) {
    return told('mirror-half', 'no.none-same', { content: { content } });
  }
  const isOffered = axis === 'both' && isChosen(response);
  return isOffered ? told('mirror-half', 'no.quarters') : undefined;
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
      ? told('mirror-half', 'no.few-same', { content: { content } })
      : told('mirror-half', 'no.kinds');
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
  const because = told('mirror-half', 'no.elements');
  return notAChoice('elements', values.elements, possible.map(String), String(nearest), because);
}

/** In four places three of one kind leave one place free, so that hardly anything can be wrong. */
function choicesRefusal(values: MirrorValues): Refusal | undefined {
  const { response, deep, along, elements, kinds, choices, wrong } = values;
  const isNarrow = deep * along === 4 && elements === 3 && kinds === 1;
  const max = isNarrow ? { far: 2, near: 2, turned: 3, copied: 4 }[wrong] : PARAMETERS.choices.max;
  if (!isChosen(response) || choices <= max) return undefined;
  return outOfRange('choices', choices, 2, max, told('mirror-half', 'no.wrong'));
}

/**
 * Fewer places along the line, else fewer deep, else so many deep as go with the fewest along; where the smallest halves
 * are too many side by side, fewer of them.
 */
function paperRefusal(values: MirrorValues): Refusal | undefined {
  const fits = (changes: Partial<MirrorValues>) =>
    fitsUpright(leastSize(sketchOf({ ...values, ...changes })));
  if (fits({})) return undefined;
  const [along, deep] = [PARAMETERS.along.min, PARAMETERS.deep.min];
  const ways: readonly (readonly [Resizing, Partial<MirrorValues>])[] = [
    ['along', {}],
    ['deep', {}],
    ['deep', { along }],
    ['choices', { along, deep }],
  ];
  const because = told('mirror-half', 'no.page');
  for (const [name, others] of ways) {
    const { min } = PARAMETERS[name];
    for (let max = values[name] - 1; max >= min; max--) {
      if (!fits({ ...others, [name]: max })) continue;
      return outOfRange(name, values[name], min, max, because);
    }
  }
  throw new Error('mirror-half › choices: expected two of the smallest halves to have room');
}

type Resizing = 'along' | 'deep' | 'choices';

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
  because: Told,
): Refusal {
  return { code: 'out-of-range', at: `${ID} › ${name}`, got, min, max, because };
}

function notAChoice(
  name: keyof MirrorValues,
  got: string | number,
  choices: readonly string[],
  nearest: string | undefined,
  because: Told,
): Refusal {
  const base = { code: 'not-a-choice', at: `${ID} › ${name}`, got, choices, because } as const;
  return nearest === undefined ? base : { ...base, nearest };
}
