// An outline as plain data.
import type { Path } from '../base/index.ts';

export interface Outline {
  /** In a cell of side 1 about (0, 0): all that is inked lies within −0.5 to 0.5 both ways. */
  readonly path: Path;
  readonly rule: 'nonzero' | 'evenodd';
  /** The path is a line to be drawn with round ends, this wide in cell sides; absent: an area. */
  readonly drawn?: { readonly widthShare: number };
}
