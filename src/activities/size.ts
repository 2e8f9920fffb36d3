// How wide and high something is.

export interface Size {
  readonly widthMm: number;
  readonly heightMm: number;
}
