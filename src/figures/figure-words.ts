// What a language must be able to say of a figure.
import type { ColourName } from '../palette/index.ts';
import type { DotLayout, Fill } from './figure.ts';
import type { FormId } from './form-names.ts';

/** What is said of a figure; what is absent is left unsaid. */
export interface SaidOfFigure {
  readonly form: FormId;
  readonly colour?: ColourName | undefined;
  readonly size?: number | undefined;
  readonly fill?: Fill | undefined;
  readonly dots?: { readonly count: number; readonly layout: DotLayout } | undefined;
  readonly mirrored: boolean;
  /** Degrees clockwise from the upright place, unseen turns taken out. */
  readonly turn?: number | undefined;
}

/** The words of one language. */
export interface FigureWords {
  readonly colour: (colour: ColourName) => string;
  readonly fill: (fill: Fill) => string;
  readonly form: (form: FormId) => string;
  readonly figure: (said: SaidOfFigure) => string;
}
