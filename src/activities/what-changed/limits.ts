// What cannot be asked for together, and why: each refusal names the parameter and the nearest that would do.
import { type Refusal, type Told, told } from '../../base/index.ts';
import { attributesOf } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { shortOfColours } from '../colours-at-hand.ts';
import { type ChangeValues, ID, MOST_CHANGES } from './task.ts';

/** Of fewer a figure that has changed would look like one that has moved. */
const FEWEST_COLOURS = 3;

/** Empty where the values are valid. */
export function limitsOf(values: ChangeValues, style: PrintStyle): readonly Refusal[] {
  const isColoured = attributesOf(values.content).includes('colour');
  const colours = isColoured ? shortOfColours(ID, coloursNeeded(values), style) : undefined;
  return colours ? [colours] : changeRefusals(values);
}

/** A figure that takes on a look takes one that no other changed figure had. */
function coloursNeeded({ kind, changes }: ChangeValues): number {
  const isAltered = kind === 'first' || kind === 'any' || kind === 'mixed';
  return Math.max(FEWEST_COLOURS, isAltered ? changes + 1 : 0);
}

function changeRefusals({ kind, figures, changes }: ChangeValues): readonly Refusal[] {
  const most = Math.min(MOST_CHANGES, Math.floor(figures / 2));
  if (changes > most) {
    const because = told('what-changed', 'no.half');
    return [outOfRange(changes, 1, most, because)];
  }
  if (kind === 'mixed' && changes < 2) {
    if (most < 2) return [notAKind(kind, 'first', told('what-changed', 'no.one-change'))];
    return [outOfRange(changes, 2, most, told('what-changed', 'no.one-change'))];
  }
  if (kind !== 'swapped' || changes % 2 === 0) return [];
  if (most < 2) return [notAKind(kind, 'first', told('what-changed', 'no.two'))];
  const nearest = changes === 3 && most === MOST_CHANGES ? MOST_CHANGES : 2;
  return [outOfRange(changes, nearest, nearest, told('what-changed', 'no.swapped'))];
}

function outOfRange(got: number, min: number, max: number, because: Told): Refusal {
  return { code: 'out-of-range', at: `${ID} › changes`, got, min, max, because };
}

function notAKind(got: string, nearest: string, because: Told): Refusal {
  const choices = ['gone', 'added', 'first', 'any'];
  return { code: 'not-a-choice', at: `${ID} › kind`, got, choices, nearest, because };
}
