// The parts of a guide: what is folded, ruled, stuck on and drawn; all lengths in mm.
import type { ColourName } from '../palette/index.ts';

export type Direction = 'across' | 'down';

/** A crease at `part` of `of` equal parts of the page: at that share of its width (`across`) or height (`down`). */
export interface Fold {
  readonly direction: Direction;
  readonly part: number;
  readonly of: number;
  /** From the left or the top edge, in mm; no whole 5 mm, since folding finds it. */
  readonly atMm: number;
}

/** An upright box ruled with a pen; whole 5 mm from the left and the top edge. */
export interface RuledBox {
  /** From 1, in reading order. */
  readonly number: number;
  readonly leftMm: number;
  readonly topMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly isDashed: boolean;
}

/** A straight line between two points; whole 5 mm from the left and the top edge. */
export interface RuledLine {
  readonly from: readonly [xMm: number, yMm: number];
  readonly to: readonly [xMm: number, yMm: number];
  readonly isDashed: boolean;
}

/** Why a page has to be copied as it is. */
export type CopyReason = 'curves' | 'overlapping' | 'crowded';

/** The pen that something is drawn with; `own`: as many as the picture has colours. */
export type Pen = ColourName | 'own';

export interface Placement {
  /** From 1, in the order of the list. */
  readonly number: number;
  readonly isSticker: boolean;
  /** What it is, without its colour. */
  readonly name: string;
  readonly colour: Pen;
  /** What it takes along and across, in mm; of a sticker its diameter. */
  readonly widthMm: number;
  readonly heightMm: number;
  /** Its middle, from the left and the top edge of the page. */
  readonly xMm: number;
  readonly yMm: number;
  /** The smallest box, or part of the folded page, that it stands in, by number; absent: none. */
  readonly box?: number;
  /** The thing that it stands inside, by number; its own middle then need not lie on a ruler's mark. */
  readonly inside?: number;
  /** Fills the space between lines; its corners, not its middle, lie on marks. */
  readonly isPatch: boolean;
  /** Too rich to draw from words: copied square by square, or traced. */
  readonly isCopied: boolean;
  /** Which of the laid pieces it is. */
  readonly piece: number;
}
