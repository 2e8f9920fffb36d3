// Where the shared figures stand in their boxes: never the same place in boxes that a child compares.
import type { Random } from '../../base/index.ts';

/** Boxes before the one at an index that stand next to it on paper or in the order of reading. */
function earlierNeighbours(index: number, columns: number): readonly number[] {
  return [...new Set([index - 1, index - columns])].filter((neighbour) => neighbour >= 0);
}

/**
 * For each box, a place (0 up to `places`) for each of `shared` figures: different within the box, and
 * for each figure different from its places in the neighbours of the box. All such ways can come out.
 *
 * There is one whenever `places` exceeds `shared` and, with two columns in more than two boxes, is at
 * least three: figure j of box i at place (j + c) mod `places`, where c is i mod 3 for two columns and
 * i mod 2 else. For neighbours are then 1 or 2 apart in c, or 1: with one column or all boxes in a row
 * they are i and i − 1, and with three or five columns i and i − 3 or i − 5 too, which are odd steps.
 */
export function spreadShared(
  boxes: number,
  columns: number,
  places: number,
  shared: number,
  random: Random,
): readonly (readonly number[])[] {
  const spread = extend([], { boxes, columns, places, shared }, random);
  if (!spread) throw new Error(`in-every-box › places: none for ${boxes} boxes of ${places}`);
  return spread;
}

interface Room {
  readonly boxes: number;
  readonly columns: number;
  readonly places: number;
  readonly shared: number;
}

type Spread = readonly (readonly number[])[];

/** Goes on from the boxes done, trying the ways of the next one in random order; a finite search. */
function extend(done: Spread, room: Room, random: Random): Spread | undefined {
  if (done.length === room.boxes) return done;
  const before = earlierNeighbours(done.length, room.columns).flatMap((index) => {
    const box = done[index];
    return box ? [box] : [];
  });
  return placeNext([], before, room, random, (box) => extend([...done, box], room, random));
}

/** Places one more figure of a box away from where it stands in the boxes `before`, then the next. */
function placeNext(
  box: readonly number[],
  before: Spread,
  room: Room,
  random: Random,
  whenFull: (box: readonly number[]) => Spread | undefined,
): Spread | undefined {
  if (box.length === room.shared) return whenFull(box);
  const taken = [...box, ...before.map((earlier) => earlier[box.length])];
  const free = Array.from({ length: room.places }, (_, place) => place).filter(
    (place) => !taken.includes(place),
  );
  for (const place of random.shuffle(free)) {
    const spread = placeNext([...box, place], before, room, random, whenFull);
    if (spread) return spread;
  }
  return undefined;
}
