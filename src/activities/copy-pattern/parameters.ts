// What can be asked of copy-pattern: its parameters, their finite ranges and the values they take.
import { choice, type ValuesOf, whole, yesNo } from '../parameters.ts';
import { STICKERS_SOLD_MM } from '../sticker-sizes.ts';
import { CONTENTS, type Content, type CopyResponse, RESPONSES } from './task.ts';

export const GIVENS = ['none', 'some', 'most'] as const;

export const SYMMETRIES = ['any', 'mirror', 'turn', 'none'] as const;
export type SymmetryWish = (typeof SYMMETRIES)[number];

export const PARAMETERS = {
  /** What the model is made of. */
  content: choice(...CONTENTS),
  /** What the child does; must suit the content. */
  response: choice(...RESPONSES),
  /** Rows of cells, or of lattice points. */
  rows: whole(2, 5),
  /** Columns of cells, or of lattice points. */
  columns: whole(2, 5),
  /** How many cells hold something, or how many lines there are. */
  elements: whole(1, 25),
  /** How many different elements occur, such as colours or letters; dots and lines are all alike. */
  kinds: whole(1, 4),
  /** How many boxes the model is copied into. */
  boxes: whole(1, 6),
  /** How much of each box is there already. */
  givens: choice(...GIVENS),
  /** `mirror`: has a mirror line; `turn`: looks the same turned, but has no mirror line; `none`: neither. */
  symmetry: choice(...SYMMETRIES),
  /** Whether the elements hang together: cells touch at a side or corner, lines share a point. */
  joined: yesNo(),
  /** Whether some lines are slanted; only for lines. */
  slanted: yesNo(),
  /** Diameter of the stickers in mm; speaks only where the response is a sticker. */
  stickerMm: choice(...STICKERS_SOLD_MM),
} as const;

export type CopyValues = ValuesOf<typeof PARAMETERS>;

/** The responses that suit a content, the usual one first. */
export function responsesOf(content: Content): readonly [CopyResponse, ...CopyResponse[]] {
  switch (content) {
    case 'dots':
      return ['draw', 'colour-in'];
    case 'colours':
      return ['sticker', 'colour-in'];
    case 'filled-cells':
      return ['colour-in'];
    case 'lines':
      return ['draw-line'];
    default:
      return ['draw'];
  }
}
