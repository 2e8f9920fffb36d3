// Which entry each item asks for: counts first, then an order that no place, row or column gives away.
import type { Random } from '../../base/index.ts';
import type { Parameters } from './parameters.ts';

/** In reading order, and down the columns, no entry stands more often than this in a row. */
const LONGEST_RUN = 2;

/** How many items ask for each entry; the entries that get more are drawn. */
export function drawCounts(
  random: Random,
  { entries, items, balanced }: Pick<Parameters, 'entries' | 'items' | 'balanced'>,
): readonly number[] {
  return random.shuffle(balanced ? shares(items, entries) : tiltedShares(random, items, entries));
}

/** One entry stands out by a little: so much that it is seen in the counts, so little that no run is forced. */
function tiltedShares(random: Random, items: number, entries: number): readonly number[] {
  const most = entries === 2 ? 1 : Math.max(1, Math.floor(items / (2 * entries)));
  const favoured = Math.ceil(items / entries) + random.int(1, most);
  return [favoured, ...shares(items - favoured, entries - 1)];
}

function shares(items: number, entries: number): readonly number[] {
  return Array.from(
    { length: entries },
    (_, entry) => Math.floor(items / entries) + (entry < items % entries ? 1 : 0),
  );
}

/**
 * The entry of each item, in reading order, for a grid of `columns`: a search that always ends, each place
 * drawn by what is left and taken back where it leads nowhere. A defect if the counts admit no order.
 */
export function drawOrder(
  random: Random,
  counts: readonly number[],
  columns: number,
): readonly number[] {
  const items = counts.reduce((sum, count) => sum + count, 0);
  const byColumns = columnOrder(items, columns);
  const order: number[] = [];
  if (!complete(random, order, [...counts], byColumns)) {
    throw new Error(`by-key › order: none for counts ${counts.join(' ')} in ${columns} columns`);
  }
  return order;
}

function complete(
  random: Random,
  order: number[],
  left: number[],
  byColumns: readonly number[],
): boolean {
  if (order.length === byColumns.length) {
    const downwards = byColumns.map((place) => order[place] as number);
    return isUnforeseeable(order, left.length) && isUnforeseeable(downwards, left.length);
  }
  const drawn = left.flatMap((count, entry) => Array.from({ length: count }, () => entry));
  for (const entry of new Set(random.shuffle(drawn))) {
    order.push(entry);
    left[entry] = (left[entry] ?? 0) - 1;
    if (!endsInRun(order, byColumns) && complete(random, order, left, byColumns)) return true;
    order.pop();
    left[entry] = (left[entry] ?? 0) + 1;
  }
  return false;
}

/** Whether the last placed item makes a run too long, along the rows or down the columns. */
function endsInRun(order: readonly number[], byColumns: readonly number[]): boolean {
  const place = order.length - 1;
  const entry = order[place];
  const before = order.slice(-LONGEST_RUN - 1);
  if (before.length > LONGEST_RUN && before.every((other) => other === entry)) return true;
  const at = byColumns.indexOf(place);
  return Array.from({ length: LONGEST_RUN + 1 }, (_, index) => at - index).some((start) => {
    const window = byColumns.slice(Math.max(0, start), start + LONGEST_RUN + 1);
    return start >= 0 && window.length > LONGEST_RUN && window.every((p) => order[p] === entry);
  });
}

/** The places of a grid read down its columns, from the left. */
function columnOrder(items: number, columns: number): readonly number[] {
  const places = Array.from({ length: items }, (_, place) => place);
  return [...places].sort((a, b) => (a % columns) - (b % columns) || a - b);
}

/** Not the key's own order or its reverse all the way, and no part that comes round again and again. */
function isUnforeseeable(order: readonly number[], entries: number): boolean {
  const isKeyOrder = order.every((entry, place) => entry === place % entries);
  const isReverse = order.every((entry, place) => entry === entries - 1 - (place % entries));
  const periods = Array.from({ length: Math.floor(order.length / 2) }, (_, index) => index + 1);
  const repeats = [...periods, ...(order.length >= entries + 2 ? [entries] : [])].some((period) =>
    order.every((entry, place) => place < period || entry === order[place - period]),
  );
  return !isKeyOrder && !isReverse && !repeats;
}

/**
 * Which of `variants` each item shows, so that it tells nothing of the entry: dealt out in turn over each
 * entry's items, on from where the entry before stopped.
 */
export function dealVariants(
  random: Random,
  order: readonly number[],
  variants: number,
): readonly number[] {
  const dealt = order.map(() => 0);
  let next = 0;
  for (const entry of random.shuffle([...new Set(order)])) {
    const places = random.shuffle(
      order.flatMap((other, place) => (other === entry ? [place] : [])),
    );
    for (const place of places) {
      dealt[place] = next;
      next = (next + 1) % variants;
    }
  }
  return dealt;
}
