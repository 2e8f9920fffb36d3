// Where the two pictures and the places in them stand on paper: side by side, or the first above the second.
import { type Area, gridPlaces, type Hand } from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { leastCellMm } from '../placing.ts';
import { columnsFor, GAP_SHARE, type Printed } from './task.ts';

/** One picture: its frame, and the cells of its places in reading order. */
export interface ScenePlan {
  readonly frame: Area;
  readonly cells: readonly Area[];
}

/** Between the cells and the line of the frame, room for a ring; in mm, common practice, no source. */
const PAD_MM = 4;
/** Between the two frames: with the blank inside them twice as much as between figures. */
const BETWEEN_MM = 8;
/**
 * Pictures of so many columns or fewer stand side by side, which lets the eye go straight across. For the left hand,
 * which would lie on the first while it answers in the second, they do not.
 */
const MOST_BESIDE = 3;
/** Beyond this, times the least, a page looks stretched, not calm (by eye). */
const MOST_SCALE = 1.5;

export function leastSize(printed: Printed, hand?: Hand): Size {
  return sizeOf(printed, leastCell(printed), 1, hand);
}

/**
 * The two pictures in the middle of `size`, which is at least the least size for one of the hands. A mirrored page may
 * have room for the other hand's layout alone. Where that puts the pictures beside each other for a hand that would lie
 * on the first, a hand that rings or crosses has the first away from it; a finger that points lies on nothing, and finds
 * the first where reading begins.
 */
export function planPage(
  printed: Printed,
  size: Size,
  hand?: Hand,
): readonly [ScenePlan, ScenePlan] {
  if (fits(leastSize(printed, hand), size)) return plannedFor(printed, size, hand);
  const [one, other] = plannedFor(printed, size, hand === 'left' ? undefined : 'left');
  const isPointed = (printed.response ?? 'point') === 'point';
  return isPointed || isBeside(printed, hand) ? [one, other] : [other, one];
}

/** Sizes that come from sums may differ in their last digits. */
const SLACK_MM = 0.001;

function fits(least: Size, size: Size): boolean {
  return least.widthMm <= size.widthMm + SLACK_MM && least.heightMm <= size.heightMm + SLACK_MM;
}

function plannedFor(printed: Printed, size: Size, hand: Hand): readonly [ScenePlan, ScenePlan] {
  const least = leastSize(printed, hand);
  const within = Math.min(size.widthMm / least.widthMm, size.heightMm / least.heightMm);
  const scale = Math.max(1, Math.min(within, MOST_SCALE));
  const cellMm = scale * leastCell(printed);
  const used = sizeOf(printed, cellMm, scale, hand);
  const { widthMm, heightMm } = frameSize(printed, cellMm, scale);
  const left = (size.widthMm - used.widthMm) / 2;
  const top = (size.heightMm - used.heightMm) / 2;
  const beyond = BETWEEN_MM * scale;
  const second = isBeside(printed, hand)
    ? { left: left + widthMm + beyond, top }
    : { left, top: top + heightMm + beyond };
  const planAt = (at: { readonly left: number; readonly top: number }) =>
    planScene(printed, { ...at, width: widthMm, height: heightMm }, cellMm, scale);
  return [planAt({ left, top }), planAt(second)];
}

function planScene(printed: Printed, frame: Area, cellMm: number, scale: number): ScenePlan {
  const pad = PAD_MM * scale;
  const inside = {
    left: frame.left + pad,
    top: frame.top + pad,
    width: frame.width - 2 * pad,
    height: frame.height - 2 * pad,
  };
  const places = placeCount(printed);
  const cells = gridPlaces(places, columnsFor(places), inside, GAP_SHARE * cellMm);
  return {
    frame,
    cells: cells.map((cell, place) => {
      const { across = 0, down = 0 } = printed.nudges?.[place] ?? {};
      return { ...cell, left: cell.left + across * cellMm, top: cell.top + down * cellMm };
    }),
  };
}

function leastCell({ first, second }: Printed): number {
  return leastCellMm([...first, ...second].filter((figure) => figure !== null));
}

function sizeOf(printed: Printed, cellMm: number, scale: number, hand: Hand): Size {
  const { widthMm, heightMm } = frameSize(printed, cellMm, scale);
  const between = BETWEEN_MM * scale;
  return isBeside(printed, hand)
    ? { widthMm: 2 * widthMm + between, heightMm }
    : { widthMm, heightMm: 2 * heightMm + between };
}

function frameSize(printed: Printed, cellMm: number, scale: number): Size {
  const places = placeCount(printed);
  const columns = columnsFor(places);
  const lengthOf = (count: number) =>
    (count + (count - 1) * GAP_SHARE) * cellMm + 2 * PAD_MM * scale;
  return { widthMm: lengthOf(columns), heightMm: lengthOf(Math.ceil(places / columns)) };
}

function isBeside(printed: Printed, hand: Hand): boolean {
  return hand !== 'left' && columnsFor(placeCount(printed)) <= MOST_BESIDE;
}

function placeCount({ first, second }: Printed): number {
  return Math.max(first.length, second.length);
}
