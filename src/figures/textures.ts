// The eight textures as lines and patches in mm, to be laid over a rectangle and cut off at an outline.
import { circlePath, linePath, type Path, type PathStep, rectanglePath } from '../base/index.ts';
import type { Texture } from './figure.ts';

/** Marks to be inked: lines of a width, or filled patches. */
export type TextureMarks =
  | { readonly path: Path; readonly widthMm: number }
  | { readonly path: Path; readonly filled: true };

/** Everything below in mm; so coarse that two or three repeats show in a figure of 14 mm. Judged by eye. */
const STRIPE = { pitch: 2.5, width: 0.9 };
const SPOT = { pitch: 3, radius: 0.75 };
const CHECK = { side: 2.2 };
const ZIGZAG = { step: 1.5, height: 2, pitch: 3, width: 0.8 };
const WAVE = { step: 3.5, height: 1.3, pitch: 2.8, width: 0.8 };
const BRICK = { length: 4.6, height: 2.4, width: 0.6 };

/** The marks of a texture over the rectangle from (0, 0), centred in it and reaching a little beyond. */
export function texturePath(texture: Texture, widthMm: number, heightMm: number): TextureMarks {
  switch (texture) {
    case 'upright-stripes':
      return { path: uprightStripes(widthMm, heightMm), widthMm: STRIPE.width };
    case 'level-stripes':
      return { path: levelStripes(widthMm, heightMm), widthMm: STRIPE.width };
    case 'slanted-stripes':
      return { path: slantedStripes(widthMm, heightMm), widthMm: STRIPE.width };
    case 'spots':
      return { path: spots(widthMm, heightMm), filled: true };
    case 'checks':
      return { path: checks(widthMm, heightMm), filled: true };
    case 'zigzag':
      return { path: zigzag(widthMm, heightMm), widthMm: ZIGZAG.width };
    case 'waves':
      return { path: waves(widthMm, heightMm), widthMm: WAVE.width };
    case 'bricks':
      return { path: bricks(widthMm, heightMm), widthMm: BRICK.width };
  }
}

/** Whole steps from the middle outward that cover `length` on both sides and one more. */
function steps(length: number, pitch: number): readonly number[] {
  const reach = Math.ceil(length / 2 / pitch) + 1;
  return Array.from({ length: 2 * reach + 1 }, (_, index) => index - reach);
}

function line(x1: number, y1: number, x2: number, y2: number): Path {
  return linePath([
    { x: x1, y: y1 },
    { x: x2, y: y2 },
  ]);
}

function uprightStripes(width: number, height: number): Path {
  return steps(width, STRIPE.pitch).flatMap((step) => {
    const x = width / 2 + step * STRIPE.pitch;
    return line(x, -STRIPE.pitch, x, height + STRIPE.pitch);
  });
}

function levelStripes(width: number, height: number): Path {
  return steps(height, STRIPE.pitch).flatMap((step) => {
    const y = height / 2 + step * STRIPE.pitch;
    return line(-STRIPE.pitch, y, width + STRIPE.pitch, y);
  });
}

/** Rising to the right at 45°. */
function slantedStripes(width: number, height: number): Path {
  const pitch = STRIPE.pitch * Math.SQRT2;
  const half = height / 2 + STRIPE.pitch;
  return steps(width + height, pitch).flatMap((step) => {
    const x = width / 2 + step * pitch;
    return line(x - half, height / 2 + half, x + half, height / 2 - half);
  });
}

/** Every second row stands half a pitch aside. */
function spots(width: number, height: number): Path {
  const rise = SPOT.pitch / 2;
  return steps(height, rise).flatMap((row) =>
    steps(width, SPOT.pitch).flatMap((column) =>
      circlePath(
        width / 2 + (column + (row % 2 === 0 ? 0 : 0.5)) * SPOT.pitch,
        height / 2 + row * rise,
        SPOT.radius,
      ),
    ),
  );
}

function checks(width: number, height: number): Path {
  const { side } = CHECK;
  return steps(height, side).flatMap((row) =>
    steps(width, side)
      .filter((column) => (row + column) % 2 === 0)
      .flatMap((column) =>
        rectanglePath(
          width / 2 + (column - 0.5) * side,
          height / 2 + (row - 0.5) * side,
          side,
          side,
        ),
      ),
  );
}

function zigzag(width: number, height: number): Path {
  return steps(height, ZIGZAG.pitch).flatMap((row) => {
    const y = height / 2 + row * ZIGZAG.pitch;
    return linePath(
      steps(width, ZIGZAG.step).map((step) => ({
        x: width / 2 + step * ZIGZAG.step,
        y: y + (step % 2 === 0 ? -ZIGZAG.height / 2 : ZIGZAG.height / 2),
      })),
    );
  });
}

function waves(width: number, height: number): Path {
  const { step: length, height: swing, pitch } = WAVE;
  return steps(height, pitch).flatMap((row) => {
    const y = height / 2 + row * pitch;
    const [first = 0, ...rest] = steps(width, length);
    const curves = rest.map((step): PathStep => {
      const [x, tilt] = [width / 2 + step * length, step % 2 === 0 ? -swing : swing];
      return ['C', x - length * 0.6, y + tilt, x - length * 0.4, y + tilt, x, y];
    });
    return [['M', width / 2 + first * length, y] as const, ...curves];
  });
}

function bricks(width: number, height: number): Path {
  const beds = steps(height, BRICK.height).flatMap((row) => {
    const y = height / 2 + (row - 0.5) * BRICK.height;
    return line(-BRICK.length, y, width + BRICK.length, y);
  });
  const joints = steps(height, BRICK.height).flatMap((row) =>
    steps(width, BRICK.length).flatMap((column) => {
      const x = width / 2 + (column + (row % 2 === 0 ? 0.5 : 0)) * BRICK.length;
      const y = height / 2 + (row - 0.5) * BRICK.height;
      return line(x, y, x, y + BRICK.height);
    }),
  );
  return [...beds, ...joints];
}

/**
 * Textures of one family, told apart but easily taken for each other: lines that run otherwise, or small things
 * set like bricks. By eye.
 */
export const NEAR_TEXTURES: readonly (readonly [Texture, Texture])[] = [
  ['upright-stripes', 'level-stripes'],
  ['upright-stripes', 'slanted-stripes'],
  ['level-stripes', 'slanted-stripes'],
  ['level-stripes', 'bricks'],
  ['level-stripes', 'waves'],
  ['checks', 'bricks'],
];
