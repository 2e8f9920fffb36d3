// The square of a picture that is taken, in pixels of the picture, and how it is moved.

export interface Square {
  /** Its middle. */
  readonly x: number;
  readonly y: number;
  readonly side: number;
}

interface Size {
  readonly width: number;
  readonly height: number;
}

/** A step of a button or a key, as a share of the square. */
export const MOVE = 0.05;
export const GROW = 1.1;
const LEAST_SHARE = 0.08;

/** The largest square in the middle. */
export function firstSquare({ width, height }: Size): Square {
  return { x: width / 2, y: height / 2, side: Math.min(width, height) };
}

/** The picture moved under the window by shares of its side: to the right, so the square goes to the left. */
export function moved(square: Square, right: number, down: number, size: Size): Square {
  const { x, y, side } = square;
  return within({ x: x - right * side, y: y - down * side, side }, size);
}

/** The picture made so many times bigger under the window. */
export function grown(square: Square, times: number, size: Size): Square {
  const { width, height } = size;
  const longer = Math.max(width, height);
  const side = Math.min(longer, Math.max(LEAST_SHARE * longer, square.side / times));
  return within({ ...square, side }, size);
}

/** Its middle stays in the picture. */
function within({ x, y, side }: Square, { width, height }: Size): Square {
  return { x: Math.min(width, Math.max(0, x)), y: Math.min(height, Math.max(0, y)), side };
}
