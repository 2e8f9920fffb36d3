// Colours as `#rrggbb`, and the way from there to light and to CIELAB and back.
import {
  convertLrgbToRgb,
  convertRgbToLab65,
  convertRgbToLrgb,
  type Lab65,
  type Lrgb,
  parseHex,
  type Rgb,
  serializeHex,
} from 'culori/fn';

/** An sRGB colour of 8 bits a channel, `#rrggbb`. */
export type Hex = `#${string}`;

/** The gamma-coded sRGB channels of a colour, 0 to 1; a defect if it is not `#rrggbb`. */
export function rgbOf(hex: Hex): Rgb {
  const rgb = /^#[0-9a-f]{6}$/i.test(hex) ? parseHex(hex) : undefined;
  if (!rgb) throw new Error(`palette › colour: expected #rrggbb, got ${hex}`);
  return rgb;
}

/** The channels of a colour as shares of light, 0 to 1. */
export function lightOf(hex: Hex): Lrgb {
  return convertRgbToLrgb(rgbOf(hex));
}

/** Light, coded for a screen or printer; what lies outside 0 to 1 is cut off. */
export function rgbFromLight({ r, g, b }: Omit<Lrgb, 'mode'>): Rgb {
  return convertLrgbToRgb({ r: cut(r), g: cut(g), b: cut(b) });
}

/** The nearest colour of 8 bits a channel. */
export function hexFrom(rgb: Rgb): Hex {
  return serializeHex(rgb) as Hex;
}

/** CIELAB coordinates under D65, the white of sRGB. */
export function labOf(rgb: Rgb): Lab65 {
  return convertRgbToLab65(rgb);
}

/** A channel cut to 0 to 1. */
export function cut(channel: number): number {
  return Math.min(1, Math.max(0, channel));
}
