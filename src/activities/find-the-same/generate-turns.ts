// Draws directions: without a left-right mirror image among them, or with one where it is asked for.
import type { Random } from '../../base/index.ts';
import { drawTurns, type FormId, uprightTurnDeg } from '../../figures/index.ts';
import type { SameValues } from './task.ts';

/** Turns in degrees, each beside its left-right mirror image. */
const MIRROR_PAIRS: Readonly<
  Record<'left-right' | 'slanted', readonly (readonly [turn: number, mirrored: number])[]>
> = {
  'left-right': [
    [90, 270],
    [270, 90],
  ],
  slanted: [
    [45, 315],
    [315, 45],
    [135, 225],
    [225, 135],
  ],
};

/** `count` turns as values, at most three without mirrors and four with; the first two mirror each other. */
export function drawTurnValues(
  form: FormId,
  count: number,
  mirrors: SameValues['mirrors'],
  random: Random,
): readonly { readonly turn: number }[] {
  const turns =
    mirrors === 'none'
      ? drawTurns(random, count, form)
      : drawMirrored(mirrors, form, random).slice(0, count);
  return turns.map((turn) => ({ turn }));
}

function drawMirrored(
  mirrors: 'left-right' | 'slanted',
  form: FormId,
  random: Random,
): readonly number[] {
  const pair = random.pick(MIRROR_PAIRS[mirrors]);
  const all = mirrors === 'slanted' ? [45, 135, 225, 315] : [0, 90, 180, 270];
  const turns = [...pair, ...random.shuffle(all.filter((turn) => !pair.includes(turn)))];
  return turns.map((turn) => (turn + uprightTurnDeg(form)) % 360);
}
