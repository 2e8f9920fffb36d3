// Luminance: the contrast of two colours, and the grey that a colour becomes without coloured ink.
import { wcagContrast, wcagLuminance } from 'culori/fn';
import { type Hex, hexFrom, lightOf, rgbFromLight } from './hex.ts';

/**
 * The contrast of two colours, 1 (equal luminance) to 21 (black on white).
 * Source: W3C, Web Content Accessibility Guidelines 2.2, "contrast ratio"; graphics want 3, small text 4.5.
 */
export function contrastOf(one: Hex, other: Hex): number {
  return wcagContrast(lightOf(one), lightOf(other));
}

/** The grey of the same luminance as a colour. */
export function greyLike(hex: Hex): Hex {
  const light = wcagLuminance(lightOf(hex));
  return hexFrom(rgbFromLight({ r: light, g: light, b: light }));
}
