// What a response asks of the hand, as levels in the order in which children come to master the movements.
import type { Sign, Texture } from '../figures/index.ts';

/** Everything that a child can be asked to do with its hands. */
export type Deed = 'point' | 'sticker' | 'colour-in' | 'ring' | 'join' | 'cut' | Sign | Texture;

/**
 * Levels 0 to 7. The order dot, line, ring, upright cross, oblique cross, square, triangle is that of the
 * copying ages of the Gesell tradition (circle 3, cross 4, square 4.5, triangle 5 to 5.5; sources differ by a
 * year or more); oblique lines come late there too. Level lines beside upright ones, pointing, stickers, colouring
 * in, cutting, wave, tick and textures are placed among them by common practice, no source.
 */
const LEVELS: Readonly<Record<Deed, number>> = {
  point: 0,
  sticker: 1,
  'sign-dot': 1,
  'colour-in': 2,
  'sign-upright-line': 2,
  'sign-level-line': 2,
  ring: 3,
  'sign-ring': 3,
  join: 3,
  spots: 3,
  cut: 4,
  'sign-plus': 4,
  'upright-stripes': 4,
  'level-stripes': 4,
  'sign-oblique-cross': 5,
  'slanted-stripes': 5,
  'sign-wave': 5.5,
  waves: 5.5,
  'sign-tick': 5.5,
  zigzag: 6,
  'sign-square': 6,
  checks: 7,
  bricks: 7,
  'sign-triangle': 7,
};

/** All deeds, easiest first. */
export const DEEDS = Object.keys(LEVELS) as readonly Deed[];

/** The level of one movement, 0 (none) to 7. */
export function handLevel(deed: Deed): number {
  return LEVELS[deed];
}

/** The level of the hardest of several movements; 0 for none. */
export function hardestHand(deeds: readonly Deed[]): number {
  return Math.max(0, ...deeds.map(handLevel));
}
