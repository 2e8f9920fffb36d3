// Makes a task and its key: figures of different sizes in mixed order. Never fails for valid values.
import type { Random } from '../../base/index.ts';
import {
  attributesOf,
  DOT_CONTROLS,
  dotsOf,
  drawCounts,
  drawSpace,
  type Figure,
} from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { coloursOf, drawColours } from '../../palette/index.ts';
import { COUNT_RATIO, drawSized, sizesOf } from './generate-sizes.ts';
import type { Answer, OrderValues, Printed } from './task.ts';

export function generate(
  values: OrderValues,
  random: Random,
  style: PrintStyle,
): { readonly printed: Printed; readonly answer: Answer } {
  const { asked, response, layout } = values;
  const rising = drawRising(values, random, style);
  const ranks = drawPlaces(values, random);
  const order = rising.map((_, rank) => ranks.indexOf(rank));
  return {
    printed: { figures: ranks.flatMap((rank) => rising[rank] ?? []), asked, response, layout },
    answer: asked === 'order' ? order : [ranks.indexOf(rankAsked(values))],
  };
}

/** The rank, 0 for the smallest, of the figure that is asked for. */
function rankAsked({ asked, figures }: OrderValues): number {
  if (asked === 'smallest') return 0;
  return asked === 'middle' ? (figures - 1) / 2 : figures - 1;
}

/** The ranks from left to right. One that is asked for stands anywhere; an order is never there already. */
function drawPlaces(values: OrderValues, random: Random): readonly number[] {
  const { asked, figures } = values;
  const ranks = Array.from({ length: figures }, (_, rank) => rank);
  if (asked === 'order') return mixed(random.shuffle(ranks), random);
  const wanted = rankAsked(values);
  const others = random.shuffle(ranks.filter((rank) => rank !== wanted));
  const place = random.int(0, figures - 1);
  return [...others.slice(0, place), wanted, ...others.slice(place)];
}

/** The ranks, or where they rise or fall all along, with two neighbours changed. */
function mixed(ranks: readonly number[], random: Random): readonly number[] {
  const steps = ranks.slice(1).map((rank, index) => Math.sign(rank - (ranks[index] ?? 0)));
  if (steps.some((step) => step !== steps[0])) return ranks;
  const at = random.int(0, ranks.length - 2);
  const [one = 0, other = 0] = ranks.slice(at, at + 2);
  return [...ranks.slice(0, at), other, one, ...ranks.slice(at + 2)];
}

/** The figures from the smallest, or fewest, to the biggest. */
function drawRising(values: OrderValues, random: Random, style: PrintStyle): readonly Figure[] {
  const { content, figures, difference } = values;
  const attributes = attributesOf(content);
  if (content === 'dot-quantities') return drawQuantities(values, random, style);
  const hasForms = content === 'shapes-and-sizes' || content === 'shapes-colours-and-sizes';
  const { base, axes } = drawSpace(content, random, {}, style);
  const shared = Object.assign({}, base, ...axes.map(({ values: [look] }) => look)) as Figure;
  const falling: readonly Figure[] = hasForms
    ? drawSized(figures, difference, random)
    : sizesOf(figures, difference).map((size) => ({ ...shared, size }));
  const colours = attributes.includes('colour')
    ? drawColours(random, figures, style.print, coloursOf(style))
    : undefined;
  return falling
    .map((figure, index) => ({ ...figure, ...(colours ? { colour: colours[index] } : {}) }))
    .reverse();
}

function drawQuantities(
  { content, figures, difference }: OrderValues,
  random: Random,
  style: PrintStyle,
): readonly Figure[] {
  const { base } = drawSpace(content, random, {}, style);
  const control = random.pick(DOT_CONTROLS);
  const counts = drawCounts(random, figures, COUNT_RATIO[difference]);
  return [...counts]
    .sort((one, other) => one - other)
    .map((count) => ({ ...base, ...dotsOf(count, control) }));
}
