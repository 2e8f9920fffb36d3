// Large print: the same tasks drawn larger, as far as the page has room.
import type { Size } from '../activities/index.ts';
import type { Area } from '../page/index.ts';
import type { SheetSpec } from './sheet-spec.ts';

/**
 * How much larger, at the least and at the most. Large print is 16 to 18 points where usual print is 12 (guidelines for
 * print for people with low vision; from memory), which is 1.33 to 1.5 times; less than 1.25 is hardly seen.
 */
const LEAST_LARGE = 1.25;
const MOST_LARGE = 1.5;

/** What tasks of these rooms need of a page in this size. */
export function enlargedRooms(rooms: readonly Size[], size: SheetSpec['size']): readonly Size[] {
  if (size === undefined) return rooms;
  return rooms.map(({ widthMm, heightMm }) => ({
    widthMm: widthMm * LEAST_LARGE,
    heightMm: heightMm * LEAST_LARGE,
  }));
}

/** How many times larger tasks of these rooms are drawn in these places: one number for the whole sheet. */
export function enlargementIn(
  rooms: readonly Size[],
  places: readonly Area[],
  size: SheetSpec['size'],
): number {
  if (size === undefined) return 1;
  const most = places.map(({ width, height }, index) => {
    const room = rooms[index] ?? { widthMm: width, heightMm: height };
    return Math.min(width / room.widthMm, height / room.heightMm);
  });
  return Math.min(MOST_LARGE, ...most);
}
