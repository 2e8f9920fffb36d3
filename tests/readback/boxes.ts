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
  const rules = rulesOf(raster);
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const side = rules.map((rule) => sideOf(areaOf(item), rule)).join('');
    groups.set(side, [...(groups.get(side) ?? []), item]);
  }
  return [...groups.values()];
}

/** Thin straight lines that stand by themselves, level or upright, at least 40 mm long. */
function rulesOf(raster: Raster): Area[] {
  const least = (40 / 25.4) * raster.dpi;
  return areasOf(raster, isInked).areas.filter(({ left, right, top, bottom }) => {
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
