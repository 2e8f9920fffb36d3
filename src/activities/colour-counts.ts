// The colours of what is laid out, each with how often it comes.
import { COLOUR_NAMES, type ColourName } from '../palette/index.ts';

/** In the order of the colour names; only those that come. */
export function countedColours(
  colours: readonly ColourName[],
): readonly (readonly [ColourName, number])[] {
  return COLOUR_NAMES.map(
    (name) => [name, colours.filter((colour) => colour === name).length] as const,
  ).filter(([, count]) => count > 0);
}
