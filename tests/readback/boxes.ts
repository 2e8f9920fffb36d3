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
export function middleColour(raster: Raster, { left, right, top, bottom }: Area): string {
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

/** What stands on the page by itself, and what lies within its bounds: a frame with its figures, or one figure. */
export interface Thing {
  readonly area: Area;
  /** The outermost areas inside, in reading order. */
  readonly inside: readonly Area[];
}

/** The things of each task, tasks and things in reading order; what is shorter than `leastMm` both ways is left out. */
export function tasksOf(raster: Raster, leastMm = 4): Thing[][] {
  const least = (leastMm / 25.4) * raster.dpi;
  const { areas } = areasOf(raster, isInked);
  const rules = rulesOf(raster, areas);
  const large = areas.filter(
    (area) =>
      !rules.includes(area) && Math.max(area.right - area.left, area.bottom - area.top) > least,
  );
  const things = outermost(large).map((area) => ({
    area,
    inside: inReadingOrder(outermost(large.filter((other) => isInside(other, area))), (one) => one),
  }));
  const tasks = partedBy(rules, things, ({ area }) => area);
  return inReadingOrder(tasks, (task) => boundsOf(task.map(({ area }) => area))).map((task) =>
    inReadingOrder(task, ({ area }) => area),
  );
}

interface Bounds {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

function boundsOf(areas: readonly Area[]): Bounds {
  return {
    left: Math.min(...areas.map(({ left }) => left)),
    top: Math.min(...areas.map(({ top }) => top)),
    right: Math.max(...areas.map(({ right }) => right)),
    bottom: Math.max(...areas.map(({ bottom }) => bottom)),
  };
}

/** Row by row from the top, each row from the left. */
export function inReadingOrder<T>(items: readonly T[], boundsOfItem: (item: T) => Bounds): T[] {
  return rowsOf(items, boundsOfItem).flat();
}

/** Items in rows: a new row begins where middles are further apart than half of the highest item. */
export function rowsOf<T>(items: readonly T[], boundsOfItem: (item: T) => Bounds): T[][] {
  const placed = items.map((item) => {
    const { left, top, bottom } = boundsOfItem(item);
    return { item, left, middle: (top + bottom) / 2, height: bottom - top };
  });
  const apart = Math.max(0, ...placed.map(({ height }) => height)) / 2;
  const rows: (typeof placed)[] = [];
  for (const one of placed.sort((a, b) => a.middle - b.middle)) {
    const row = rows.at(-1);
    const previous = row?.at(-1);
    if (row && previous && one.middle - previous.middle < apart) row.push(one);
    else rows.push([one]);
  }
  return rows.map((row) => row.sort((a, b) => a.left - b.left).map(({ item }) => item));
}
