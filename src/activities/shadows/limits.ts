// What cannot be asked for together, and why: each refusal names the parameter and the nearest that would do.
import type { Refusal } from '../../base/index.ts';
import { contentName } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { shortOfColours } from '../colours-at-hand.ts';
import { mostShadows } from './forms.ts';
import { MODEL_COLOURS } from './generate.ts';
import { ID, PARAMETERS, type ShadowValues } from './task.ts';
import { mostTurns } from './turns.ts';

/** A row of more has no room on a page. */
const MOST_IN_ROW = 6;

/** Empty where the values are valid, else the first thing that does not go. */
export function limitsOf(values: ShadowValues, style: PrintStyle): readonly Refusal[] {
  const refusal =
    mirrorsRefusal(values) ??
    responseRefusal(values) ??
    modelsRefusal(values) ??
    shadowsRefusal(values) ??
    coloursRefusal(values, style);
  return refusal === undefined ? [] : [refusal];
}

function mirrorsRefusal({ content, mirrors }: ShadowValues): Refusal | undefined {
  if (mirrors === 'none' || content === 'directions') return undefined;
  return {
    code: 'not-a-choice',
    at: at('mirrors'),
    got: mirrors,
    choices: ['none'],
    nearest: 'none',
    because: 'only directions have mirror images that can be told apart at all',
  };
}

function responseRefusal({ response, models }: ShadowValues): Refusal | undefined {
  if (models === 1 || response === 'join') return undefined;
  return {
    code: 'not-a-choice',
    at: at('response'),
    got: response,
    choices: ['join'],
    nearest: 'join',
    because: 'with several figures only a line tells which shadow goes with which',
  };
}

function modelsRefusal(values: ShadowValues): Refusal | undefined {
  const { max } = reachOf(values);
  if (values.models <= max) return undefined;
  return {
    code: 'out-of-range',
    at: at('models'),
    got: values.models,
    min: PARAMETERS.models.min,
    max,
    because: `${contentName(values.content)} leave no more shadows that can be told apart fairly`,
  };
}

function shadowsRefusal(values: ShadowValues): Refusal | undefined {
  const { models, shadows } = values;
  const { max, because } = reachOf(values);
  const min = Math.max(PARAMETERS.shadows.min, models);
  if (shadows >= min && shadows <= max) return undefined;
  return {
    code: 'out-of-range',
    at: at('shadows'),
    got: shadows,
    min,
    max,
    because: shadows < min ? 'every figure has a shadow of its own' : because,
  };
}

/** Signs are lines, which have no outline to tell them from their shadow by. */
function coloursRefusal({ content }: ShadowValues, style: PrintStyle): Refusal | undefined {
  return content === 'signs' ? shortOfColours(ID, 1, style, MODEL_COLOURS) : undefined;
}

/** How many shadows there can be, and what keeps them from being more. */
function reachOf({ content, response, mirrors }: ShadowValues): {
  readonly max: number;
  readonly because: string;
} {
  const most = content === 'directions' ? mostTurns(mirrors) : mostShadows(content);
  const room = response === 'join' ? MOST_IN_ROW : PARAMETERS.shadows.max;
  return most < room
    ? {
        max: most,
        because: `${contentName(content)} leave no more shadows that can be told apart fairly`,
      }
    : { max: room, because: 'shadows to be joined stand in one row, which has no room for more' };
}

function at(name: keyof ShadowValues): string {
  return `${ID} › ${name}`;
}
