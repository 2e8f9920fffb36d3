// What cannot be asked for together, and why: each refusal names the parameter and the nearest that would do.
import { type Refusal, type Told, told } from '../../base/index.ts';
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
    because: told('reasons', 'mirrors'),
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
    because: told('shadows', 'no.join'),
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
    because: told('shadows', 'no.content', { content: { content: values.content } }),
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
    because: shadows < min ? told('shadows', 'no.own') : because,
  };
}

/** Signs are lines, which have no outline to tell them from their shadow by. */
function coloursRefusal({ content }: ShadowValues, style: PrintStyle): Refusal | undefined {
  return content === 'signs' ? shortOfColours(ID, 1, style, MODEL_COLOURS) : undefined;
}

/** How many shadows there can be, and what keeps them from being more. */
function reachOf({ content, response, mirrors }: ShadowValues): {
  readonly max: number;
  readonly because: Told;
} {
  const most = content === 'directions' ? mostTurns(mirrors) : mostShadows(content);
  const room = response === 'join' ? MOST_IN_ROW : PARAMETERS.shadows.max;
  return most < room
    ? {
        max: most,
        because: told('shadows', 'no.content', { content: { content } }),
      }
    : { max: room, because: told('shadows', 'no.row') };
}

function at(name: keyof ShadowValues): string {
  return `${ID} › ${name}`;
}
