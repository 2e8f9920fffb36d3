// How different two colours look, as CIEDE2000.
import { differenceCiede2000, type Rgb } from 'culori/fn';
import { type Hex, labOf, rgbOf } from './hex.ts';

/** A colour in CIELAB: lightness 0 to 100, green to red, blue to yellow. */
export interface Lab {
  readonly l: number;
  readonly a: number;
  readonly b: number;
}

const ciede2000 = differenceCiede2000();

/**
 * The CIEDE2000 difference of two CIELAB colours (kL = kC = kH = 1), 0 upward; white to black is 100.
 * Source: Sharma, Wu & Dalal 2005, Color Research and Application 30(1), 21–30.
 */
export function labDifferenceDe00(one: Lab, other: Lab): number {
  return ciede2000({ ...one, mode: 'lab65' }, { ...other, mode: 'lab65' });
}

/** The CIEDE2000 difference of two colours given by their sRGB channels, 0 upward. */
export function rgbDifferenceDe00(one: Rgb, other: Rgb): number {
  return labDifferenceDe00(labOf(one), labOf(other));
}

/** The CIEDE2000 difference of two colours to normal sight, 0 upward; white to black is 100. */
export function differenceDe00(one: Hex, other: Hex): number {
  return rgbDifferenceDe00(rgbOf(one), rgbOf(other));
}
