// The places of the app by name, and which one an address means.

/** In the order in which they are shown. */
export const PLACE_NAMES = ['today', 'make', 'week', 'record', 'growth', 'supplies'] as const;
export type PlaceName = (typeof PLACE_NAMES)[number];

export function hashOf(place: PlaceName): string {
  return `#${place}`;
}

/**
 * Which of the places that are there the part of an address from `#` on means; what a place is asked for stands after
 * `?`, as in `#record?code=…`. Without one: Today, if a child is known that it can be about. Whatever is no other place
 * is a recipe, which is of Make.
 */
export function placeOf(
  hash: string,
  there: readonly PlaceName[],
  isChildKnown: boolean,
): PlaceName {
  const isNothing = hash === '' || hash === '#';
  if (isNothing && isChildKnown && there.includes('today')) return 'today';
  const [name] = hash.split('?');
  return there.find((place) => hashOf(place) === name) ?? 'make';
}
