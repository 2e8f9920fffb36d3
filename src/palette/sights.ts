// Colours as seen without one of the three kinds of cone, by the published models.
import type { Rgb } from 'culori/fn';
import { cut, type Hex, lightOf, rgbFromLight, rgbOf } from './hex.ts';

/** Normal sight, and sight without the long, the middle or the short-wave cones. */
export const SIGHTS = ['normal', 'protan', 'deutan', 'tritan'] as const;
export type Sight = (typeof SIGHTS)[number];

/**
 * How a deficiency is modelled. The Machado matrices are published without saying whether they take light
 * or gamma-coded values: their authors' pictures are gamma-coded, later libraries use light, and the choice
 * turns verdicts round (deutan red and brown). So both are kept, and Viénot as a second opinion.
 */
export const MODELS = ['machado-light', 'machado-coded', 'vienot-light'] as const;
export type Model = (typeof MODELS)[number];

export type Deficiency = Exclude<Sight, 'normal'>;

/** What red, green and blue contribute to one seen channel. */
export type Row = readonly [red: number, green: number, blue: number];
export type Matrix = readonly [red: Row, green: Row, blue: Row];

/**
 * Severity 1.0 (dichromacy).
 * Source: Machado, Oliveira & Fernandes 2009, A Physiologically-based Model for Simulation of Color Vision
 * Deficiency, IEEE TVCG 15(6), 1291–1298; matrices from the authors' web table.
 */
export const MACHADO: Readonly<Record<Deficiency, Matrix>> = {
  protan: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deutan: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritan: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/**
 * For sRGB light. The method does not suit missing short-wave cones, so it has no such matrix.
 * Source: Viénot, Brettel & Mollon 1999, Digital video colourmaps for checking the legibility of displays
 * by dichromats, Color Research and Application 24(4), 243–252, as worked out for the sRGB primaries.
 */
export const VIENOT: Readonly<Partial<Record<Deficiency, Matrix>>> = {
  protan: [
    [0.11238, 0.88762, 0],
    [0.11238, 0.88762, 0],
    [0.00401, -0.00401, 1],
  ],
  deutan: [
    [0.29275, 0.70725, 0],
    [0.29275, 0.70725, 0],
    [-0.02234, 0.02234, 1],
  ],
};

/** The models that speak about a sight; normal sight looks the same by all, so one stands for them. */
export function modelsOf(sight: Sight): readonly Model[] {
  if (sight === 'normal') return ['machado-light'];
  return sight === 'tritan' ? ['machado-light', 'machado-coded'] : MODELS;
}

/**
 * A colour as `sight` sees it by `model`, at full severity, in sRGB channels that are not rounded to 8 bits; a defect if
 * the model has no such sight.
 */
export function rgbAsSeen(hex: Hex, sight: Sight, model: Model): Rgb {
  if (sight === 'normal') return rgbOf(hex);
  const matrix = (model === 'vienot-light' ? VIENOT : MACHADO)[sight];
  if (!matrix) throw new Error(`palette › sight: ${model} has no ${sight}`);
  if (model !== 'machado-coded') return rgbFromLight(seenBy(matrix, lightOf(hex)));
  const { r, g, b } = seenBy(matrix, rgbOf(hex));
  return { mode: 'rgb', r: cut(r), g: cut(g), b: cut(b) };
}

type Channels = Pick<Rgb, 'r' | 'g' | 'b'>;

function seenBy([red, green, blue]: Matrix, channels: Channels): Channels {
  return { r: sum(red, channels), g: sum(green, channels), b: sum(blue, channels) };
}

function sum([red, green, blue]: Row, { r, g, b }: Channels): number {
  return red * r + green * g + blue * b;
}
