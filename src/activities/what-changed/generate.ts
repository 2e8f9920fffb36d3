// Makes two pictures and the places in which they differ. Never fails for valid values.
import type { Random } from '../../base/index.ts';
import { type Figure, figureAt } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { alter, swap } from './generate-changes.ts';
import { dealLooks, drawStock, type Look, type Stock } from './generate-looks.ts';
import {
  type Answer,
  type ChangeValues,
  columnsFor,
  MOST_NUDGE,
  type Nudge,
  type Printed,
} from './task.ts';

/** Nudges are drawn from so many steps each way. */
const NUDGE_STEPS = 5;

/** What happens to one figure. */
type Deed = 'gone' | 'added' | 'changed';

export function generate(
  values: ChangeValues,
  random: Random,
  style: PrintStyle,
): { readonly printed: Printed; readonly answer: Answer } {
  const { kind, figures, layout, response } = values;
  const stock = drawStock(values, random, style);
  const looks = dealLooks(stock, values, random);
  const after = kind === 'swapped' ? swap(stock, looks, values, random) : undefined;
  const deeds = after ? new Map<number, Deed>() : drawDeeds(values, stock, looks, random);
  const places = [...deeds.keys()];
  const changed = after ?? newLooks(values, stock, looks, places, random);
  const show = (look: Look | undefined, isShown: boolean): Figure | null =>
    look && isShown ? figureAt(stock.space, look) : null;
  const printed: Printed = {
    first: looks.map((look, place) => show(look, deeds.get(place) !== 'added')),
    second: looks.map((look, place) =>
      show(changed.get(place) ?? look, deeds.get(place) !== 'gone'),
    ),
    asked: changed.size,
    told: after ? 'swaps' : 'differences',
    ...(layout === 'loose' ? { nudges: drawNudges(figures, random) } : {}),
    response,
  };
  return { printed, answer: [...changed.keys()].sort((a, b) => a - b) };
}

/** What stands in the places that differ, where it is shown; a figure that only goes or comes stays what it is. */
function newLooks(
  values: ChangeValues,
  stock: Stock,
  looks: readonly Look[],
  places: readonly number[],
  random: Random,
): ReadonlyMap<number, Look> {
  return comesOrGoes(values)
    ? new Map(places.map((place) => [place, looks[place] ?? []]))
    : alter(stock, looks, places, values, random);
}

function comesOrGoes({ kind }: ChangeValues): boolean {
  return kind === 'gone' || kind === 'added';
}

/** The places that will differ, each with what happens there. */
function drawDeeds(
  values: ChangeValues,
  { rare }: Stock,
  looks: readonly Look[],
  random: Random,
): ReadonlyMap<number, Deed> {
  const { kind, changes } = values;
  const places = looks.map((_, place) => place);
  // Of an attribute with two values only the usual one changes, so that no two changes make a swap.
  const usual = places.filter((place) => rare.every((axis) => looks[place]?.[axis] === 0));
  const chosen = random.sample(comesOrGoes(values) ? places : usual, changes);
  const deeds = deedsOf(kind, changes, random);
  return new Map(chosen.map((place, index) => [place, deeds[index] ?? 'changed']));
}

function deedsOf(kind: ChangeValues['kind'], changes: number, random: Random): readonly Deed[] {
  if (kind === 'gone' || kind === 'added') return Array.from({ length: changes }, () => kind);
  if (kind !== 'mixed') return [];
  const others = random.shuffle<Deed>(['gone', 'added']);
  return ['changed', ...others].slice(0, changes) as readonly Deed[];
}

/** Small steps off the middle, at the edges inward only, which leaves room for rings; a single row stays nearly straight. */
function drawNudges(places: number, random: Random): readonly Nudge[] {
  const columns = columnsFor(places);
  const rows = Math.ceil(places / columns);
  const step = (at: number, count: number) => {
    const least = at === 0 ? 0 : -NUDGE_STEPS;
    const most = at === count - 1 ? 0 : NUDGE_STEPS;
    const drawn = count === 1 ? random.int(-1, 1) : random.int(least, most);
    return Math.round((100 * drawn * MOST_NUDGE) / NUDGE_STEPS) / 100;
  };
  return Array.from({ length: places }, (_, place) => {
    const row = Math.floor(place / columns);
    const inRow = Math.min(columns, places - row * columns);
    return { across: step(place % columns, inRow), down: step(row, rows) };
  });
}
