// How large everything of a by-key task is, in mm, and the least room that a task needs.
import type { Size } from '../activity.ts';
import { fitsUpright } from '../upright-room.ts';
import { columnsOf, leastSizeOf, type Stand, standOf } from './contents.ts';
import type { Parameters, ResponseKind } from './parameters.ts';

/** What the size of a task hangs on. */
export interface Plan {
  readonly stand: Stand;
  readonly response: ResponseKind;
  readonly entries: number;
  readonly items: number;
  readonly columns: number;
  /** Smallest figure as a share of the full size. */
  readonly leastSize: number;
  readonly stickerMm: number;
  /** Whether figures have fine parts that must be seen, as pictures and textures have. */
  readonly hasFineParts: boolean;
}

/**
 * Least full size of a figure in mm: coloured, filled or drawn into; ringed; only looked at. On short sheets,
 * which are the first, more: a box to fill with crayon at three is at least 25 mm. Common practice, no source.
 */
const FIGURE_MM: Readonly<Record<Stand, number>> = { inside: 18, around: 16, below: 14 };
const FIRST_FIGURE_MM: Readonly<Record<Stand, number>> = { inside: 25, around: 20, below: 20 };
const MOST_ITEMS_AT_FIRST = 9;
const MOST_ENTRIES_AT_FIRST = 3;
/** Least size of the smallest figures in mm: worked in, so that 12 mm are drawn; ringed; only looked at. */
const SMALLEST_MM: Readonly<Record<Stand, number>> = { inside: 17, around: 12, below: 9.5 };
/** Least full size in mm of a figure with fine parts; common practice, no source. */
const FINE_PARTS_MM = 18;
/** Least height in mm of the space below a figure: for a sign or a pattern, and for crayon. */
const SPACE_MM = 14;
const CRAYON_SPACE_MM = 18;
/** Figures grow with the room up to this. */
const MOST_FIGURE_MM: Readonly<Record<Stand, number>> = { inside: 38, around: 34, below: 30 };

/** Blank between a figure and the ring round it, the ring's own width included. */
export const RING_MM = 3.5;
/** A card with a figure above and the space for its response below: blank round the figure. */
export const CARD_PAD_MM = 2;
/** The space for the response in figure heights, where that is more than the least. */
const SPACE_SHARE = 0.8;
/** A place for a sticker is this much wider than the sticker (common practice, no source: 2 to 4). */
export const STICKER_SPARE_MM = 3;

export const KEY_PAD_MM = 4;
/** Least distance of neighbours; more than any blank inside them. */
export const LEAST_GAP_MM: Readonly<Record<Stand, number>> = {
  inside: 7,
  around: 5,
  below: 4.5,
};
/** Figures stop growing where gaps would fall below this share of their height. */
const EASY_GAP_SHARE = 0.22;
/** Between the key and the items. */
export const KEY_GAP_MM = 10;

/** One figure with the room for its response. */
export function unitSize({ stand, response, stickerMm }: Plan, figureMm: number): Size {
  if (stand === 'inside') return { widthMm: figureMm, heightMm: figureMm };
  if (stand === 'around') {
    const across = figureMm + 2 * RING_MM;
    return { widthMm: across, heightMm: across };
  }
  const targetMm = stickerMm + STICKER_SPARE_MM;
  const isPlaced = response === 'sticker';
  return {
    widthMm: Math.max(figureMm, isPlaced ? targetMm : 0) + 2 * CARD_PAD_MM,
    heightMm:
      figureMm +
      2 * CARD_PAD_MM +
      (isPlaced ? targetMm + CARD_PAD_MM : spaceMm(response, figureMm)),
  };
}

/** Height of the space that is drawn or coloured in below a figure. */
function spaceMm(response: ResponseKind, figureMm: number): number {
  return Math.max(response === 'colour-in' ? CRAYON_SPACE_MM : SPACE_MM, SPACE_SHARE * figureMm);
}

/** The key's strip with `gapMm` between its entries. */
export function keySize(plan: Plan, figureMm: number, gapMm: number): Size {
  const unit = unitSize(plan, figureMm);
  return {
    widthMm: plan.entries * unit.widthMm + (plan.entries - 1) * gapMm + 2 * KEY_PAD_MM,
    heightMm: unit.heightMm + 2 * KEY_PAD_MM,
  };
}

/** All of a task at a size of figures, with gaps of `gapMm` all round. */
export function taskSize(plan: Plan, figureMm: number, gapMm = LEAST_GAP_MM[plan.stand]): Size {
  const unit = unitSize(plan, figureMm);
  const key = keySize(plan, figureMm, gapMm);
  const rows = Math.ceil(plan.items / plan.columns);
  return {
    widthMm: Math.max(key.widthMm, plan.columns * (unit.widthMm + gapMm) - gapMm),
    heightMm: key.heightMm + KEY_GAP_MM + rows * (unit.heightMm + gapMm) - gapMm,
  };
}

/** The least full size of figures that is fair to eye and hand. */
function leastFigureMm({ stand, entries, items, leastSize, hasFineParts }: Plan): number {
  const isFirst = items <= MOST_ITEMS_AT_FIRST && entries <= MOST_ENTRIES_AT_FIRST;
  const full = isFirst ? FIRST_FIGURE_MM[stand] : FIGURE_MM[stand];
  const fine = hasFineParts ? FINE_PARTS_MM : 0;
  return Math.max(full, fine, Math.ceil(SMALLEST_MM[stand] / leastSize));
}

/** The largest size of figures, in steps of half a mm, at which the task stays within `size` at ease. */
export function figureMmWithin(plan: Plan, size: Size): number {
  const least = leastFigureMm(plan);
  const isAtEase = (figureMm: number) => {
    const gapMm = EASY_GAP_SHARE * unitSize(plan, figureMm).heightMm;
    return fits(taskSize(plan, figureMm, Math.max(LEAST_GAP_MM[plan.stand], gapMm)), size);
  };
  let figureMm = Math.max(least, MOST_FIGURE_MM[plan.stand]);
  while (figureMm > least && !isAtEase(figureMm)) figureMm = Math.max(least, figureMm - 0.5);
  return figureMm;
}

/** The least room of a task. */
export function roomOf(plan: Plan): Size {
  return taskSize(plan, leastFigureMm(plan));
}

/** Whether an upright sheet of every home paper has room for a task of these values. */
export function fitsOnPage(values: Parameters): boolean {
  return fitsUpright(roomOf(planOf(values)));
}

function planOf(values: Parameters): Plan {
  const stand = standOf(values);
  return {
    stand,
    response: values.response,
    entries: values.entries,
    items: values.items,
    columns: columnsOf(values.items, stand),
    leastSize: leastSizeOf(values),
    stickerMm: values.stickerMm,
    hasFineParts: values.content === 'pictures' || values.content === 'textures',
  };
}

function fits(size: Size, within: Size): boolean {
  return size.widthMm <= within.widthMm && size.heightMm <= within.heightMm;
}
