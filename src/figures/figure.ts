// A figure: one thing that a child looks at, as plain data; a field is absent where it does not apply.
import type { ColourName } from '../palette/index.ts';
import type { FormId } from './form-names.ts';

/** How the dots of a quantity lie: as on dice, in one row, or without order. */
export const DOT_LAYOUTS = ['dice', 'row', 'scattered-1', 'scattered-2', 'scattered-3'] as const;
export type DotLayout = (typeof DOT_LAYOUTS)[number];

/** How the inside of an outline looks; the last eight are textures. */
export const TEXTURES = [
  'upright-stripes',
  'level-stripes',
  'slanted-stripes',
  'spots',
  'checks',
  'zigzag',
  'waves',
  'bricks',
] as const;
export type Texture = (typeof TEXTURES)[number];
export const FILLS = ['solid', 'outline', ...TEXTURES] as const;
export type Fill = (typeof FILLS)[number];

export interface Figure {
  /**
   * Outline or glyph: `circle`, `capital-A`, `small-a`, `letter-Ж`, `numeral-3`, `sign-ring`, `picture-cat`,
   * `dots`.
   */
  readonly form?: FormId | undefined;
  /** Colour of the figure; absent: ink, or for a picture its own colours. */
  readonly colour?: ColourName | undefined;
  /** Share of the full size at which the activity prints figures: above 0, at most 1; absent: 1. */
  readonly size?: number | undefined;
  /** Degrees clockwise, 0 up to but not including 360; absent: 0. */
  readonly turn?: number | undefined;
  /** Mirrored left to right, before the turn; absent: not. */
  readonly mirrored?: boolean | undefined;
  /** For the form `dots`: how many, 1 to 6. */
  readonly count?: number | undefined;
  /** For the form `dots`: how they lie. */
  readonly layout?: DotLayout | undefined;
  /**
   * For the form `dots`: diameter of each dot as a share of the usual one, their places staying; at least
   * `LEAST_DOT_SIZE`, at most `mostDotSize`; absent: 1.
   */
  readonly dotSize?: number | undefined;
  /** Absent: solid. A picture with a colour or a fill is its silhouette. */
  readonly fill?: Fill | undefined;
}

/** The form of a figure; one without a form is a circle, such as a dot of colour. */
export function formOf(figure: Figure): FormId {
  return figure.form ?? 'circle';
}

/** How the dots of a figure lie; absent: as on dice. */
export function layoutOf(figure: Figure): DotLayout {
  return figure.layout ?? 'dice';
}
