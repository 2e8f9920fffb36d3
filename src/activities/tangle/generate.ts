// Makes a task and its key: outlines over one another, and those to choose from. Never fails for valid values.
import type { Random } from '../../base/index.ts';
import { type Figure, uprightTurnDeg } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { coloursOf, drawColours } from '../../palette/index.ts';
import { ownSeen } from './generate-own.ts';
import { layOver } from './generate-places.ts';
import { poolOf, TURN_SETS, TURNED } from './pools.ts';
import type { Answer, Printed, TangleValues } from './task.ts';

export function generate(
  values: TangleValues,
  random: Random,
  style: PrintStyle,
): { readonly printed: Printed; readonly answer: Answer } {
  const { tangle, absent } = layOver(outlinesOf(values, random), values, random);
  const isColoured = values.content === 'shapes-and-colours';
  const outlines = tangle.length + absent.length;
  const colours = isColoured ? drawColours(random, outlines, style.print, coloursOf(style)) : [];
  const inColour = (figure: Figure, number: number): Figure => {
    const colour = colours[number];
    return colour ? { ...figure, colour } : figure;
  };
  const laid = tangle.map((placed, index) => ({
    ...placed,
    figure: inColour(placed.figure, index),
  }));
  const shown = laid.map(({ figure }) => figure);
  const others = absent.map((figure, index) => inColour(figure, tangle.length + index));
  const candidates = random.shuffle([...shown, ...others]);
  const answer = candidates.flatMap((figure, place) => (shown.includes(figure) ? [place] : []));
  return { printed: { tangle: laid, candidates, response: values.response }, answer };
}

/** All outlines that the content draws from, or one shape in the directions that can stand together. */
function outlinesOf({ content, shown, absent }: TangleValues, random: Random): readonly Figure[] {
  if (content !== 'directions') {
    return ownSeen(poolOf(content), shown + absent, random).map((form) => ({ form }));
  }
  const form = random.pick(TURNED);
  const upright = uprightTurnDeg(form);
  return random.pick(TURN_SETS).map((turn) => ({ form, turn: (turn + upright) % 360 }));
}
