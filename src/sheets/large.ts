// Large print: the same tasks drawn larger, as far as the page has room, stickers and their places from one size sold to another.
import {
  type Activity,
  type Material,
  type Size,
  STICKERS_SOLD_MM,
  type Task,
} from '../activities/index.ts';
import type { Area } from '../page/index.ts';
import type { SheetSpec } from './sheet-spec.ts';

/** How many times larger than usual tasks are drawn. */
export interface Enlargement {
  readonly least: number;
  readonly most: number;
}

const USUAL: Enlargement = { least: 1, most: 1 };
/**
 * Large print is 16 to 18 points where usual print is 12 (guidelines for print for people with low vision; from memory),
 * which is 1.33 to 1.5 times; less than 1.25 is hardly seen.
 */
const LARGE: Enlargement = { least: 1.25, most: 1.5 };
/** Stickers are sold in few sizes, so that their places cannot grow by just that. */
const STICKERS: Enlargement = { least: 1.15, most: 1.6 };

/**
 * How much these tasks may be enlarged in this size, the best first. Where stickers are placed it is by as much as leads
 * to larger stickers that are sold; none: there are none.
 */
export function enlargementsOf(
  activity: Activity,
  tasks: readonly Task[],
  size: SheetSpec['size'],
): readonly Enlargement[] {
  if (size === undefined) return [USUAL];
  const diameters = tasks.flatMap((task) => activity.materials(task).flatMap(diameterOf));
  if (diameters.length === 0) return [LARGE];
  const diameterMm = Math.max(...diameters);
  return STICKERS_SOLD_MM.map((sold) => Number(sold) / diameterMm)
    .filter((times) => times >= STICKERS.least && times <= STICKERS.most)
    .map((times) => ({ least: times, most: times }))
    .reverse();
}

function diameterOf(material: Material): readonly number[] {
  return material.kind === 'sticker' ? [material.diameterMm] : [];
}

/** What is laid out for tasks that are drawn so many times larger: stickers as large as their places. */
export function enlargedMaterials(
  materials: readonly Material[],
  times: number,
): readonly Material[] {
  return materials.map((material) =>
    material.kind === 'sticker'
      ? { ...material, diameterMm: Math.round(material.diameterMm * times) }
      : material,
  );
}

/** What tasks of these rooms need of a page at the least. */
export function enlargedRooms(rooms: readonly Size[], { least }: Enlargement): readonly Size[] {
  return rooms.map(({ widthMm, heightMm }) => ({
    widthMm: widthMm * least,
    heightMm: heightMm * least,
  }));
}

/** How many times larger tasks of these rooms are drawn in these places: one number for the whole sheet. */
export function enlargementIn(
  rooms: readonly Size[],
  places: readonly Area[],
  { least, most }: Enlargement,
): number {
  // Stickers have one size, which rounding of the places must not change.
  if (least === most) return most;
  const fitting = places.map(({ width, height }, index) => {
    const room = rooms[index] ?? { widthMm: width, heightMm: height };
    return Math.min(width / room.widthMm, height / room.heightMm);
  });
  return Math.min(most, ...fitting);
}
