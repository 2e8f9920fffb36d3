// Draws a by-key task: the key as finished examples in a strip on top, the items below it in a calm grid.
import { type Figure, formOf, isPicture, isShape } from '../../figures/index.ts';
import {
  type Area,
  asModel,
  asPlace,
  box,
  centreOf,
  type Group,
  gridPlaces,
  group,
  kept,
  marked,
  type PrintStyle,
} from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { reachOf } from '../placing.ts';
import type { Stand } from './contents.ts';
import { RING_WIDTH_MM } from './draw-response.ts';
import { drawUnit } from './draw-unit.ts';
import {
  figureMmWithin,
  KEY_GAP_MM,
  KEY_PAD_MM,
  keySize,
  LEAST_GAP_MM,
  type Plan,
  RING_MM,
  roomOf,
  taskSize,
  unitSize,
} from './room.ts';
import { type Answer, type Printed, STICKER_MM } from './task.ts';

/** Gaps grow with the room up to this share of what stands between them: further apart, a row falls to pieces. */
const MOST_GAP_SHARE = 0.75;
const MOST_KEY_GAP_MM = 18;
/** Of the blank that the gaps cannot take, what stays above the key (by eye): the task does not hang from the top. */
const ABOVE_SHARE = 0.4;
/** Columns where the task does not say: rows a little longer than the grid is high. */
const COLUMNS_TO_ROWS = 1.5;

/** The least room of a task. */
export function room(printed: Printed): Size {
  return roomOf(planOf(printed));
}

/** The task from (0, 0) to `size`; with `answer`, each item treated as its entry says. */
export function draw(printed: Printed, size: Size, style: PrintStyle, answer?: Answer): Group {
  const { key, items } = printed;
  const plan = planOf(printed);
  const figureMm = figureMmWithin(plan, size);
  const { strip, entries, cells } = placesOf(plan, figureMm, size);
  const ways = { plan, figureMm: insideRings(printed, plan, figureMm), style };
  return group('task', [
    asModel(
      group('key', [
        box(strip.left, strip.top, strip.width, strip.height, { radiusMm: 4 }),
        ...entries.map((place, index) =>
          kept(
            group('entry', drawUnit(key[index]?.figure ?? {}, place, ways, key[index]?.response)),
            centreOf(place).x,
          ),
        ),
      ]),
    ),
    group(
      'items',
      cells.map((place, index) => {
        const response = key[answer?.[index] ?? -1]?.response;
        const item = group('item', drawUnit(items[index] ?? {}, place, ways, response));
        return asPlace(marked(kept(item, centreOf(place).x), index));
      }),
    ),
  ]);
}

/** Between the ring of a key and the figure in it, in mm; by eye. */
const RING_CLEAR_MM = 0.8;

/** The size at which every figure, wide letters too, stands clear of the ring that goes round it in the key. */
function insideRings({ key, items }: Printed, { stand }: Plan, figureMm: number): number {
  if (stand !== 'around') return figureMm;
  const reach = Math.max(
    ...[...key.map(({ figure }) => figure), ...items].map((figure) => reachOf(figure).round),
  );
  const insideMm = figureMm / 2 + RING_MM - RING_WIDTH_MM - RING_CLEAR_MM;
  return Math.min(figureMm, insideMm / reach);
}

interface Places {
  readonly strip: Area;
  readonly entries: readonly Area[];
  readonly cells: readonly Area[];
}

/** Key and items from the top, each in the middle of the width; spare room widens the gaps, up to a limit. */
function placesOf(plan: Plan, figureMm: number, size: Size): Places {
  const unit = unitSize(plan, figureMm);
  const rows = Math.ceil(plan.items / plan.columns);
  const leastGap = LEAST_GAP_MM[plan.stand];
  const keyGap = gapWithin(size.widthMm - 2 * KEY_PAD_MM, plan.entries, unit.widthMm);
  const key = keySize(plan, figureMm, keyGap);
  const spareMm = size.heightMm - taskSize(plan, figureMm).heightMm;
  const gridTop = key.heightMm + Math.min(MOST_KEY_GAP_MM, KEY_GAP_MM + spareMm);
  const down = gapWithin(size.heightMm - gridTop, rows, unit.heightMm);
  // Nothing stands nearer below than beside, so that rows are read along.
  const across = Math.min(
    gapWithin(size.widthMm, plan.columns, unit.widthMm),
    rows > 1 ? Math.max(leastGap, down) : size.widthMm,
  );
  const gridMm = rows * (unit.heightMm + down) - down;
  const topMm = ABOVE_SHARE * (size.heightMm - gridTop - gridMm);
  const strip = middle(size, topMm, key.widthMm, key.heightMm);
  const grid = middle(
    size,
    topMm + gridTop,
    plan.columns * (unit.widthMm + across) - across,
    gridMm,
  );
  const inStrip = {
    left: strip.left + KEY_PAD_MM,
    top: topMm + KEY_PAD_MM,
    width: strip.width - 2 * KEY_PAD_MM,
    height: unit.heightMm,
  };
  return {
    strip,
    entries: gridPlaces(plan.entries, plan.entries, inStrip, keyGap),
    cells: gridPlaces(plan.items, plan.columns, grid, { across, down }, { lastRow: 'start' }),
  };
}

function middle(size: Size, top: number, width: number, height: number): Area {
  return { left: (size.widthMm - width) / 2, top, width, height };
}

/** The gap that `count` pieces of `pieceMm` have within `lengthMm`, up to a share of the piece. */
function gapWithin(lengthMm: number, count: number, pieceMm: number): number {
  const spareMm = count > 1 ? (lengthMm - count * pieceMm) / (count - 1) : 0;
  return Math.min(MOST_GAP_SHARE * pieceMm, Math.max(0, spareMm));
}

function planOf({ key, items, columns, stickerMm = STICKER_MM }: Printed): Plan {
  const figures = [...key.map((entry) => entry.figure), ...items];
  const response = key[0]?.response.kind ?? 'ring';
  const isOpen = figures.every(
    (figure) => isShape(formOf(figure)) && figure.fill === 'outline' && figure.colour === undefined,
  );
  const inOrBelow: Stand = response === 'sticker' || !isOpen ? 'below' : 'inside';
  return {
    stand: response === 'ring' ? 'around' : inOrBelow,
    response,
    entries: key.length,
    items: items.length,
    columns: Math.min(
      columns ?? Math.ceil(Math.sqrt(items.length * COLUMNS_TO_ROWS)),
      items.length,
    ),
    hasFineParts: figures.some(hasFineParts),
    leastSize: Math.min(...figures.map(({ size = 1 }) => size)),
    stickerMm,
  };
}

function hasFineParts(figure: Figure): boolean {
  const { fill = 'solid' } = figure;
  return isPicture(formOf(figure)) || (fill !== 'solid' && fill !== 'outline');
}
