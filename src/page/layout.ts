// Dividing an area into calm, equal, centred places; everything in mm.
import { compose, moveBy, type Point, scaleBy } from '../base/index.ts';
import type { Hand } from './print-style.ts';
import type { Group } from './scene.ts';

/** An upright rectangle of the page, in mm from the top left corner. */
export interface Area {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** A length in mm between neighbours: one for both directions, or one for each. */
export type Gap = number | { readonly across: number; readonly down: number };

export interface GridOptions {
  /** Where a last row that is not full stands; absent: in the middle. */
  readonly lastRow?: 'middle' | 'start';
}

/** The middle of an area. */
export function centreOf({ left, top, width, height }: Area): Point {
  return { x: left + width / 2, y: top + height / 2 };
}

/** The area less `insetMm` on every side; never less than nothing. */
export function insetArea({ left, top, width, height }: Area, insetMm: number): Area {
  const across = Math.min(insetMm, width / 2);
  const down = Math.min(insetMm, height / 2);
  return {
    left: left + across,
    top: top + down,
    width: width - 2 * across,
    height: height - 2 * down,
  };
}

/** A rectangle of the given size in the middle of an area, larger than it or not. */
export function centredIn(area: Area, width: number, height = width): Area {
  const centre = centreOf(area);
  return { left: centre.x - width / 2, top: centre.y - height / 2, width, height };
}

/**
 * An area of a layout that stands in `whole` as for the right hand, what is looked at left of where it is answered: the
 * same, or for the left hand as far from the other side. What stands inside keeps its order.
 */
export function onSideFor(hand: Hand, area: Area, whole: Pick<Area, 'left' | 'width'>): Area {
  if (hand !== 'left') return area;
  return { ...area, left: 2 * whole.left + whole.width - area.left - area.width };
}

/**
 * `count` equal places that fill the area, row by row, at most `columns` to a row.
 * A defect where the gaps leave no room.
 */
export function gridPlaces(
  count: number,
  columns: number,
  area: Area,
  gap: Gap = 0,
  { lastRow = 'middle' }: GridOptions = {},
): readonly Area[] {
  const { across, down } = gapsOf(gap);
  const wide = Math.min(columns, count);
  const rows = Math.ceil(count / wide);
  const width = (area.width - (wide - 1) * across) / wide;
  const height = (area.height - (rows - 1) * down) / rows;
  if (count > 0 && !(width > 0 && height > 0)) {
    throw new Error(`layout › gridPlaces: no room for ${count} places in ${columns} columns`);
  }
  return Array.from({ length: count }, (_, index) => {
    const row = Math.floor(index / wide);
    const inRow = Math.min(wide, count - row * wide);
    const missing = lastRow === 'middle' ? wide - inRow : 0;
    const left = area.left + (missing * (width + across)) / 2 + (index % wide) * (width + across);
    return { left, top: area.top + row * (height + down), width, height };
  });
}

/** `count` rows of equal height that fill the area from top to bottom. */
export function rowsOf(count: number, area: Area, gapMm = 0): readonly Area[] {
  return gridPlaces(count, 1, area, gapMm);
}

/** `count` columns of equal width that fill the area from left to right. */
export function columnsOf(count: number, area: Area, gapMm = 0): readonly Area[] {
  return gridPlaces(count, count, area, gapMm);
}

/**
 * Pieces of the given sizes in one row, in order, the row in the middle of the area, the gaps equal
 * and at most `gapMm`: they shrink, at least to nothing, where the pieces need the room.
 */
export function rowPlaces(
  sizes: readonly { readonly width: number; readonly height: number }[],
  area: Area,
  gapMm: number,
): readonly Area[] {
  const total = sizes.reduce((sum, { width }) => sum + width, 0);
  const spare = Math.max(0, area.width - total);
  const gap = sizes.length > 1 ? Math.min(gapMm, spare / (sizes.length - 1)) : 0;
  const centre = centreOf(area);
  let left = centre.x - (total + gap * (sizes.length - 1)) / 2;
  return sizes.map(({ width, height }) => {
    const place = { left, top: centre.y - height / 2, width, height };
    left += width + gap;
    return place;
  });
}

/**
 * A drawing of the given size (from its own 0, 0) made smaller where it must be, never larger, and
 * set in the middle of the area.
 */
export function placeScaled(
  group: Group,
  size: { readonly widthMm: number; readonly heightMm: number },
  area: Area,
): Group {
  const scale = Math.min(1, area.width / size.widthMm, area.height / size.heightMm);
  const { left, top } = centredIn(area, size.widthMm * scale, size.heightMm * scale);
  const place = compose(moveBy(left, top), scaleBy(scale));
  return {
    ...group,
    transform: group.transform ? compose(place, group.transform) : place,
  };
}

function gapsOf(gap: Gap): { readonly across: number; readonly down: number } {
  return typeof gap === 'number' ? { across: gap, down: gap } : gap;
}
