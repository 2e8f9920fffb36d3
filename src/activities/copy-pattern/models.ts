// Finds a random pattern with the wanted number of elements and kinds, symmetry and connection, or shows that there is none.
import type { Random } from '../../base/index.ts';
import type { CopyValues } from './parameters.ts';
import {
  isMirror,
  isUnmoved,
  neighboursOf,
  type Place,
  placesOf,
  type Symmetry,
  symmetriesOf,
} from './places.ts';
import { type Orbit, shapesOf } from './shapes.ts';

/** For each place the number of its kind, 0 upward; null: empty. */
export type Pattern = readonly (number | null)[];

/** The values that a pattern depends on. */
export type Wanted = Pick<
  CopyValues,
  'content' | 'rows' | 'columns' | 'elements' | 'kinds' | 'symmetry' | 'joined' | 'slanted'
>;

/**
 * A random pattern as wanted; undefined only if there is none. Every pattern that fits can come up.
 * The symmetry is built in: places that it swaps are filled together, so only their number must come out right.
 */
export function findPattern(wanted: Wanted, random: Random): Pattern | undefined {
  const places = placesOf(wanted.content === 'lines' ? 'lattice' : 'grid', wanted);
  const usable = places.filter((place) => wanted.slanted || !isSlant(place)).length;
  const { elements, kinds } = wanted;
  if (elements > usable || (elements === usable && kinds === 1)) return undefined;
  const symmetries = symmetriesOf(places, wanted);
  for (const images of random.shuffle(foundations(wanted, places, symmetries))) {
    const pattern = build(wanted, places, symmetries, images, random);
    if (pattern) return pattern;
  }
  return undefined;
}

/** The moves that a pattern may be built upon. Whatever survives a quarter turn survives the half turn too. */
function foundations(
  { symmetry }: Wanted,
  places: readonly Place[],
  symmetries: readonly Symmetry[],
): readonly (readonly number[])[] {
  if (symmetry === 'mirror') return symmetries.filter(isMirror).map(({ images }) => images);
  if (symmetry === 'turn') {
    return symmetries.filter(({ name }) => name === 'turn-180').map(({ images }) => images);
  }
  return [places.map((_, index) => index)];
}

function build(
  wanted: Wanted,
  places: readonly Place[],
  symmetries: readonly Symmetry[],
  images: readonly number[],
  random: Random,
): Pattern | undefined {
  const neighbours = neighboursOf(places, wanted.columns);
  const isAllowed = ([first = 0]: Orbit) => wanted.slanted || !isSlant(places[first]);
  const orbits = orbitsOf(images).filter(isAllowed);
  for (const shape of shapesOf(orbits, neighbours, wanted, random)) {
    if (wanted.slanted && !shape.flat().some((place) => isSlant(places[place]))) continue;
    const blank: Pattern = places.map(() => null);
    for (const pattern of colourings(shape, wanted.kinds, blank, random)) {
      if (hasSymmetry(pattern, wanted, symmetries)) return pattern;
    }
  }
  return undefined;
}

function orbitsOf(images: readonly number[]): readonly Orbit[] {
  return images.flatMap((image, index) =>
    image < index ? [] : [image === index ? [index] : [index, image]],
  );
}

function isSlant(place: Place | undefined): boolean {
  return place?.kind === 'rising' || place?.kind === 'falling';
}

/** Every way to give each orbit one kind so that all `kinds` occur, in a random order. */
function* colourings(
  orbits: readonly Orbit[],
  kinds: number,
  pattern: Pattern,
  random: Random,
): Generator<Pattern> {
  const unused = Array.from({ length: kinds }, (_, colour) => colour).filter(
    (colour) => !pattern.includes(colour),
  );
  if (unused.length > orbits.length) return;
  const [orbit, ...others] = random.shuffle(orbits);
  if (!orbit) {
    yield pattern;
    return;
  }
  for (const colour of random.shuffle(Array.from({ length: kinds }, (_, index) => index))) {
    const next = pattern.map((content, place) => (orbit.includes(place) ? colour : content));
    yield* colourings(others, kinds, next, random);
  }
}

function hasSymmetry(pattern: Pattern, { symmetry }: Wanted, all: readonly Symmetry[]): boolean {
  if (symmetry === 'any' || symmetry === 'mirror') return true;
  const kept = all.filter((one) => isUnmoved(pattern, one));
  return symmetry === 'none' ? kept.length === 0 : !kept.some(isMirror);
}
