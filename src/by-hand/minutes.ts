// About how long a page takes by hand.

/** Seconds a move of the hand takes, the looking and measuring before it included; all of it common practice, no source. */
export const SECONDS = {
  /** To fetch the paper and read the first line. */
  start: 20,
  fold: 8,
  /** A line ruled between two measured points; a box is four. */
  line: 10,
  sticker: 9,
  /** To put one sheet of stickers or one pen away and take the next. */
  changeOfColour: 4,
  /** A shape, letter, numeral or sign drawn at a measured point. */
  drawing: 14,
  /** A circle drawn round a coin or a sticker. */
  circle: 8,
  /** A picture or a pattern copied square by square, or traced. */
  copying: 150,
  /** A line or an outline that is copied with the page. */
  curve: 45,
} as const;

export type Move = keyof typeof SECONDS;
export type Moves = Readonly<Record<Move, number>>;

const SECONDS_A_MINUTE = 60;

/** Minutes, not rounded. */
export function minutesFor(moves: Moves): number {
  const seconds = (Object.keys(SECONDS) as Move[]).reduce(
    (sum, move) => sum + moves[move] * SECONDS[move],
    0,
  );
  return seconds / SECONDS_A_MINUTE;
}
