// What cannot be asked for together, and why: each refusal names the parameter and the nearest that would do.
import { type Refusal, type Told, told } from '../../base/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { shortOfColours } from '../colours-at-hand.ts';
import { FEWEST_COLOURS } from './generate.ts';
import { modelForms, mostOthers } from './generate-forms.ts';
import { ID, PARAMETERS, type TurnedValues } from './task.ts';

/** A row of more has no room beside its model, even on a page that lies. */
const MOST_IN_ROW = 5;

/** Empty where the values are valid; of those that depend on each other the first that fails is named. */
export function limitsOf(values: TurnedValues, style: PrintStyle): readonly Refusal[] {
  const checks = [
    turnRefusal,
    mirrorsRefusal,
    resizeRefusal,
    matchesRefusal,
    choicesRefusal,
    coloursRefusal,
    layoutRefusal,
  ];
  for (const check of checks) {
    const refusal = check(values, style);
    if (refusal) return [refusal];
  }
  return [];
}

function turnRefusal({ content, turn }: TurnedValues): Refusal | undefined {
  const possible = PARAMETERS.turn.values.filter((one) => canTurn(content, one));
  if (possible.includes(turn)) return undefined;
  const because = told('turned-shapes', 'no.slant', { content: { content } });
  return notAChoice('turn', turn, possible, 'quarter', because);
}

/** At a slant letters and pictures were not compared with each other, and a tick is an L. */
function canTurn(content: TurnedValues['content'], turn: TurnedValues['turn']): boolean {
  if (turn === 'eighth' && content !== 'shapes') return false;
  return modelForms({ content, turn, mirrors: false }).length > 0;
}

function mirrorsRefusal({ content, turn, mirrors }: TurnedValues): Refusal | undefined {
  if (!mirrors || modelForms({ content, turn, mirrors }).length > 0) return undefined;
  const because = told('turned-shapes', 'no.mirrors', { content: { content } });
  return notAChoice('mirrors', true, ['false'], 'false', because);
}

function resizeRefusal({ turn, resize }: TurnedValues): Refusal | undefined {
  if (turn !== 'none' || resize !== 'none') return undefined;
  const because = told('turned-shapes', 'no.resize');
  return notAChoice('resize', resize, ['bigger', 'smaller', 'both'], 'bigger', because);
}

function matchesRefusal({ choices, matches }: TurnedValues): Refusal | undefined {
  const max = choices - 2;
  if (matches <= max) return undefined;
  const because = told('turned-shapes', 'no.matches');
  return { code: 'out-of-range', at: at('matches'), got: matches, min: 1, max, because };
}

/** With every model that may be drawn there must be enough other forms. */
function choicesRefusal(values: TurnedValues): Refusal | undefined {
  const { content, choices, matches, mixed, mirrors } = values;
  if (!mixed) return undefined;
  const pools = modelForms(values).map((model) => mostOthers(content, model));
  const max = Math.min(...pools) + matches + (mirrors ? 1 : 0);
  if (choices <= max) return undefined;
  const because = told('turned-shapes', 'no.choices', { content: { content } });
  return { code: 'out-of-range', at: at('choices'), got: choices, min: 3, max, because };
}

function coloursRefusal(
  { content, colours }: TurnedValues,
  style: PrintStyle,
): Refusal | undefined {
  if (colours === 'one') {
    return content === 'shapes' ? shortOfColours(ID, 1, style) : undefined;
  }
  if (content !== 'pictures') return shortOfColours(ID, FEWEST_COLOURS, style);
  return notAChoice('colours', colours, ['one'], 'one', told('turned-shapes', 'no.colours'));
}

function layoutRefusal({ layout, choices }: TurnedValues): Refusal | undefined {
  if (layout !== 'row' || choices <= MOST_IN_ROW) return undefined;
  const because = told('reasons', 'row', { most: MOST_IN_ROW });
  return notAChoice('layout', layout, ['grid'], 'grid', because);
}

function notAChoice(
  name: keyof TurnedValues,
  got: string | boolean,
  choices: readonly string[],
  nearest: string,
  because: Told,
): Refusal {
  return { code: 'not-a-choice', at: at(name), got, choices, nearest, because };
}

function at(name: keyof TurnedValues): string {
  return `${ID} › ${name}`;
}
