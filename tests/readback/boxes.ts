// Finds frames, what stands in them and which of them belong together, from pixels alone.
import {
  type Area,
  areasOf,
  isDark,
  isInk,
  isInked,
  isInside,
  pixelAt,
  type Raster,
  type Rgb,
} from './raster.ts';

export interface Frame {
  readonly area: Area;
  /** The outermost inked things inside the frame, in reading order. */
  readonly things: readonly Area[];
}

/** Frames are hollow areas of ink that are larger than any sticker. */
export function framesOf(raster: Raster, leastMm = 26): Frame[] {
  const { areas } = areasOf(raster, isDark);
  const lines = areasOf(raster, isInk).areas;
  const least = (leastMm / 25.4) * raster.dpi;
  const large = lines.filter(({ left, right, top, bottom, pixels }) => {
    const [width, height] = [right - left, bottom - top];
    return (
      Math.max(width, height) > least &&
      pixels < 0.62 * width * height &&
      Math.min(width, height) > least / 3
    );
  });
  return outermost(large).map((area) => ({
    area,
    things: outermost(areas.filter((other) => isInside(other, area))),
  }));
}

/** Those areas that lie in no other. */
export function outermost(areas: readonly Area[]): Area[] {
  return areas.filter((area) => !areas.some((other) => other !== area && isInside(area, other)));
}

/** The colour in the middle of an area, as `#rrggbb`. */
export function middleColour(raster: Raster, { left, right, top, bottom }: Bounds): string {
  return hexOfPixel(
    pixelAt(raster, Math.round((left + right) / 2), Math.round((top + bottom) / 2)),
  );
}

export function hexOfPixel(pixel: Rgb): string {
  return `#${pixel.map((channel) => channel.toString(16).padStart(2, '0')).join('')}`;
}

/** Areas in the groups that the ruled lines between tasks part them into. */
export function groupsOf<T>(raster: Raster, items: readonly T[], areaOf: (item: T) => Area): T[][] {
  return partedBy(rulesOf(raster, areasOf(raster, isInked).areas), items, areaOf);
}

function partedBy<T>(rules: readonly Area[], items: readonly T[], areaOf: (item: T) => Area) {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const side = rules.map((rule) => sideOf(areaOf(item), rule)).join('');
    groups.set(side, [...(groups.get(side) ?? []), item]);
  }
  return [...groups.values()];
}

/** Thin straight lines that stand by themselves, level or upright, at least 40 mm long. */
function rulesOf({ dpi }: Raster, areas: readonly Area[]): Area[] {
  const least = (40 / 25.4) * dpi;
  return areas.filter(({ left, right, top, bottom }) => {
    const [width, height] = [right - left, bottom - top];
    return Math.max(width, height) > least && Math.min(width, height) < 4;
  });
}

/** Where an area lies to a rule: before or after it, or beside its end, where it parts nothing. */
function sideOf(area: Area, rule: Area): string {
  const isLevel = rule.right - rule.left > rule.bottom - rule.top;
  if (isLevel) return area.bottom < rule.top ? '<' : '>';
  if (area.bottom < rule.top || area.top > rule.bottom) return '-';
  return area.right < rule.left ? '<' : '>';
}

/** Something on the page, with what lies within its bounds: a frame with its figures, or one figure. */
export interface Thing extends Area {
  /** Of these, those that lie in no other one; in reading order. */
  readonly inside: readonly Thing[];
}

/**
 * The things of each task, tasks and things in reading order, as far as their pixels belong; what is shorter than
 * `leastMm` is left out.
 */
export function tasksOf(raster: Raster, leastMm = 4, belongs = isInked): Thing[][] {
  const least = (leastMm / 25.4) * raster.dpi;
  const inked = areasOf(raster, isInked).areas;
  const rules = rulesOf(raster, inked);
  const areas = belongs === isInked ? inked : areasOf(raster, belongs).areas;
  const large = areas.filter(
    (area) =>
      !rules.includes(area) && Math.max(area.right - area.left, area.bottom - area.top) > least,
  );
  const tasks = partedBy(rules, nested(large), (thing) => thing);
  return inReadingOrder(tasks.map((things) => ({ ...boundsOf(things), things }))).map(
    ({ things }) => things,
  );
}

function nested(areas: readonly Area[]): Thing[] {
  const things = outermost(areas).map((area) => ({
    ...area,
    inside: nested(areas.filter((other) => isInside(other, area))),
  }));
  return inReadingOrder(things);
}

export type Bounds = Pick<Area, 'left' | 'top' | 'right' | 'bottom'>;

export function boundsOf(areas: readonly Bounds[]): Bounds {
  return {
    left: Math.min(...areas.map(({ left }) => left)),
    top: Math.min(...areas.map(({ top }) => top)),
    right: Math.max(...areas.map(({ right }) => right)),
    bottom: Math.max(...areas.map(({ bottom }) => bottom)),
  };
}

/** Row by row from the top, each row from the left. */
export function inReadingOrder<T extends Bounds>(items: readonly T[]): T[] {
  return rowsOf(items).flat();
}

/** Items in rows: a new row begins where middles are further apart than half of the highest item. */
export function rowsOf<T extends Bounds>(items: readonly T[]): T[][] {
  const apart = Math.max(0, ...items.map(({ top, bottom }) => bottom - top)) / 2;
  const middle = ({ top, bottom }: Bounds) => (top + bottom) / 2;
  const rows: T[][] = [];
  for (const item of items.toSorted((one, other) => middle(one) - middle(other))) {
    const row = rows.at(-1);
    const previous = row?.at(-1);
    if (row && previous && middle(item) - middle(previous) < apart) row.push(item);
    else rows.push([item]);
  }
  return rows.map((row) => row.toSorted((one, other) => one.left - other.left));
}
