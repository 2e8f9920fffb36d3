// Where the handle of a box lies: at its edge, where no figure and no other handle is.
import type { Box } from '../record/targets.ts';
import type { WholeTarget } from './use-places.ts';

export interface Handle extends WholeTarget {
  readonly box: Box;
}

/** Handles of a side in mm, each in the first place at its frame that is free, else where it covers least. */
export function withHandles(
  wholes: readonly WholeTarget[],
  figures: readonly Box[],
  sideMm: number,
): readonly Handle[] {
  const taken = [...figures];
  return wholes.map((whole) => {
    const places = placesAt(whole.frame, sideMm);
    const covered = places.map((place) => coverOf(place, taken));
    const box = places[covered.indexOf(Math.min(...covered))] ?? whole.frame;
    taken.push(box);
    return { ...whole, box };
  });
}

/** Corners inside and across the edge, then on along the edges. */
function placesAt({ x, y, width, height }: Box, side: number): readonly Box[] {
  const shares = [0, 1, 0.5, 0.25, 0.75];
  const along = (from: number, length: number, share: number) => from + share * (length - side);
  return [0, side / 2, side].flatMap((out) =>
    shares.flatMap((share) => [
      { x: along(x, width, share), y: y - out, width: side, height: side },
      { x: along(x, width, share), y: y + height - side + out, width: side, height: side },
      { x: x - out, y: along(y, height, share), width: side, height: side },
      { x: x + width - side + out, y: along(y, height, share), width: side, height: side },
    ]),
  );
}

/** In mm². */
function coverOf(box: Box, others: readonly Box[]): number {
  return others.reduce((sum, other) => {
    const width = Math.min(box.x + box.width, other.x + other.width) - Math.max(box.x, other.x);
    const height = Math.min(box.y + box.height, other.y + other.height) - Math.max(box.y, other.y);
    return sum + Math.max(0, width) * Math.max(0, height);
  }, 0);
}
