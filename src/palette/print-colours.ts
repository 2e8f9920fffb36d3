// The colours that figures are printed in: one for each basic colour term, and the grey that it prints as.
import type { ColourName } from './colour-names.ts';
import { greyLike } from './contrast.ts';
import type { Hex } from './hex.ts';

/**
 * Chosen by a search (annealing over 8-bit sRGB) for the greatest least difference of any two of the eleven
 * to normal, protan and deutan sight by every model here, with normal sight wanting at least 1.7 times as
 * much, inside these bounds: nearest to its own centre, with 11 ΔE00 to spare before any other, among the
 * centres of the xkcd colour survey (2010), and with 7 to spare among the surface colours of Kelly 1965
 * (Twenty-two colors of maximum contrast); lightness, chroma and hue within a window judged by eye for each
 * name (a red that is no orange, a brown that is no black, nothing neon); grey without any tint.
 *
 * Measured: least difference 11.4 (red and green, deutan); to normal sight 25.3 (green and grey). Without
 * the windows about 14.5 is possible, with a salmon orange and a lilac pink. After a round trip through a
 * press profile (CMYK, a smaller gamut than home inks) 9.6 and 24.
 */
const PRINT_COLOURS: Readonly<Record<ColourName, Hex>> = {
  red: '#eb252f',
  orange: '#fa9000',
  yellow: '#ffe21a',
  green: '#209b59',
  blue: '#2b63da',
  purple: '#6e2180',
  pink: '#fd96c5',
  brown: '#632e00',
  grey: '#8b8b8b',
  black: '#000000',
  white: '#ffffff',
};

/** The colour that a name is printed in. */
export function hexOf(name: ColourName): Hex {
  return PRINT_COLOURS[name];
}

/** The grey of the same luminance, as a printer without coloured ink gives it. */
export function greyOf(name: ColourName): Hex {
  return greyLike(hexOf(name));
}
