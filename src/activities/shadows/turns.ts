// Draws directions for shadows of one form: without a left-right mirror image among them, or with one where it is asked for.
import type { Random } from '../../base/index.ts';
import { drawTurns, type FormId, uprightTurnDeg } from '../../figures/index.ts';
import type { ShadowValues } from './task.ts';

/** Turns in degrees, each beside its left-right mirror image. */
const MIRROR_PAIRS: Readonly<
  Record<'left-right' | 'slanted', readonly (readonly [number, number])[]>
> = {
  'left-right': [[90, 270]],
  slanted: [
    [45, 315],
    [135, 225],
  ],
};
const ALL_TURNS = { 'left-right': [0, 90, 180, 270], slanted: [45, 135, 225, 315] } as const;

/** Up, down and one side without mirrors; all four with them. */
export function mostTurns(mirrors: ShadowValues['mirrors']): number {
  return mirrors === 'none' ? 3 : 4;
}

/** `count` turns in random order, at most `mostTurns`; with mirrors the first two mirror each other. */
export function drawShadowTurns(
  form: FormId,
  count: number,
  mirrors: ShadowValues['mirrors'],
  random: Random,
): readonly number[] {
  // A crescent opens to the right where other shapes point up: a quarter turn more and left is left again.
  const quarter = uprightTurnDeg(form);
  const turns = mirrors === 'none' ? drawTurns(random, count) : drawMirrored(mirrors, random);
  return turns.slice(0, count).map((turn) => (turn + quarter) % 360);
}

function drawMirrored(mirrors: 'left-right' | 'slanted', random: Random): readonly number[] {
  const pair = random.shuffle(random.pick(MIRROR_PAIRS[mirrors]));
  const rest = ALL_TURNS[mirrors].filter((turn) => !pair.includes(turn));
  return [...pair, ...random.shuffle(rest)];
}
