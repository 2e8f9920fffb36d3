// Goes through all sets of orbits with a given number of places, in a random order, without ever meeting one twice.
import type { Random } from '../../base/index.ts';

/** Places that are filled together, one or two. */
export type Orbit = readonly number[];

interface ShapeWish {
  readonly elements: number;
  readonly kinds: number;
  readonly joined: boolean;
}

/**
 * Takes orbits one by one at random, touching what is there if the shape must be joined. A choice that
 * leads nowhere is taken back and left out from then on, so the search ends and misses nothing.
 */
export function* shapesOf(
  orbits: readonly Orbit[],
  neighbours: readonly (readonly number[])[],
  { elements, kinds, joined }: ShapeWish,
  random: Random,
): Generator<readonly Orbit[]> {
  const open = new Set(orbits);

  function* extend(taken: readonly Orbit[]): Generator<readonly Orbit[]> {
    const places = taken.flat();
    const left = elements - places.length;
    if (left === 0) {
      if (taken.length >= kinds && (!joined || isJoined(places, neighbours))) yield taken;
      return;
    }
    const touched = new Set(places.flatMap((place) => neighbours[place] ?? []));
    const isReachable = (orbit: Orbit) =>
      orbit.length <= left &&
      (!joined || taken.length === 0 || orbit.some((place) => touched.has(place)));
    const tried: Orbit[] = [];
    while (canFinish([...open], left, kinds - taken.length)) {
      const reachable = [...open].filter(isReachable);
      if (reachable.length === 0) break;
      const orbit = random.pick(reachable);
      open.delete(orbit);
      tried.push(orbit);
      yield* extend([...taken, orbit]);
    }
    for (const orbit of tried) open.add(orbit);
  }
  yield* extend([]);
}

/** Whether orbits of one and of two places can make up `left` places and number `least` or more. */
function canFinish(open: readonly Orbit[], left: number, least: number): boolean {
  const singles = open.filter((orbit) => orbit.length === 1).length;
  const most = Math.min(singles, left);
  const taken = (left - most) % 2 === 0 ? most : most - 1;
  const pairs = (left - taken) / 2;
  return taken >= 0 && pairs <= open.length - singles && taken + pairs >= least;
}

/** Whether one can go from any of the places to any other over neighbours among them. */
function isJoined(places: readonly number[], neighbours: readonly (readonly number[])[]): boolean {
  const left = new Set(places.slice(1));
  const reached = places.slice(0, 1);
  for (const place of reached) {
    for (const neighbour of neighbours[place] ?? []) {
      if (left.delete(neighbour)) reached.push(neighbour);
    }
  }
  return left.size === 0;
}
