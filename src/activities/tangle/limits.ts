// What cannot be asked for together, and why: each refusal names the parameter and the nearest that would do.
import { type Refusal, type Told, told } from '../../base/index.ts';
import { attributesOf } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { shortOfColours } from '../colours-at-hand.ts';
import { mostOutlines } from './pools.ts';
import { ID, PARAMETERS, type TangleValues } from './task.ts';

/** Empty where the values are valid; of numbers that depend on each other the first that fails is named. */
export function limitsOf(values: TangleValues, style: PrintStyle): readonly Refusal[] {
  const refusal =
    contentRefusal(values) ??
    shownRefusal(values) ??
    absentRefusal(values) ??
    coloursRefusal(values, style);
  return [refusal].filter((refusal) => refusal !== undefined);
}

/** Too few own pictures alone, or too like each other, give no tangle at all. */
function contentRefusal({ content }: TangleValues): Refusal | undefined {
  if (mostOutlines(content) >= PARAMETERS.shown.min + PARAMETERS.absent.min) return undefined;
  const choices = PARAMETERS.content.values.filter((other) => other !== content);
  const because = whyOf(content);
  return {
    code: 'not-a-choice',
    at: at('content'),
    got: content,
    choices,
    nearest: 'shapes',
    because,
  };
}

function shownRefusal({ content, shown }: TangleValues): Refusal | undefined {
  const max = mostOutlines(content) - PARAMETERS.absent.min;
  if (shown <= max) return undefined;
  const { min } = PARAMETERS.shown;
  return { code: 'out-of-range', at: at('shown'), got: shown, min, max, because: whyOf(content) };
}

function absentRefusal({ content, shown, absent }: TangleValues): Refusal | undefined {
  const max = mostOutlines(content) - shown;
  if (absent <= max) return undefined;
  const { min } = PARAMETERS.absent;
  return { code: 'out-of-range', at: at('absent'), got: absent, min, max, because: whyOf(content) };
}

/** Each outline has a colour of its own. */
function coloursRefusal(
  { content, shown, absent }: TangleValues,
  style: PrintStyle,
): Refusal | undefined {
  return attributesOf(content).includes('colour')
    ? shortOfColours(ID, shown + absent, style)
    : undefined;
}

function whyOf(content: TangleValues['content']): Told {
  const most = mostOutlines(content);
  return attributesOf(content).includes('turn')
    ? told('tangle', 'no.directions', { most })
    : told('tangle', 'no.outlines', { content: { content }, most });
}

function at(name: keyof TangleValues): string {
  return `${ID} › ${name}`;
}
