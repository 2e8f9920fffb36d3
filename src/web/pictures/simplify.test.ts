// Simplified pictures: always the same, within their limits, and fit to be known.
import { describe, expect, it } from 'vitest';
import {
  knowOwnPicture,
  MOST_PICTURE_CHARACTERS,
  MOST_PICTURE_PARTS,
} from '../../figures/index.ts';
import { type ImageHeader, readHeader } from './image-header.ts';
import { SIDE, type SimplifyWishes, simplified } from './simplify.ts';

type Rgb = readonly [red: number, green: number, blue: number];

function pixelsOf(colourAt: (x: number, y: number) => Rgb): Uint8ClampedArray {
  const pixels = new Uint8ClampedArray(4 * SIDE * SIDE);
  for (let cell = 0; cell < SIDE * SIDE; cell++) {
    pixels.set([...colourAt(cell % SIDE, Math.floor(cell / SIDE)), 255], 4 * cell);
  }
  return pixels;
}

const PAPER: Rgb = [244, 239, 228];
const APPLE = pixelsOf((x, y) => {
  if (Math.hypot(x - 64, y - 70) < 30)
    return Math.hypot(x - 54, y - 60) < 7 ? [250, 180, 170] : [200, 30, 40];
  return Math.abs(x - 64) < 4 && y > 25 && y < 45 ? [90, 60, 30] : PAPER;
});
/** Every pixel of some other colour, as in the worst photo. */
const NOISE = pixelsOf((x, y) => [
  (x * 97 + y * 31) % 256,
  (x * y * 13) % 256,
  (x * 7 + y * y) % 256,
]);
const WISHES: SimplifyWishes = { crop: 'circle', colours: 5, cutOut: true };

function pictureOf(pixels: Uint8ClampedArray, wishes: Partial<SimplifyWishes> = {}) {
  const made = simplified(pixels, { ...WISHES, ...wishes });
  if ('fault' in made) throw new Error(made.fault);
  return made;
}

describe('simplified', () => {
  it('gives the same picture of the same pixels', () => {
    expect(pictureOf(APPLE)).toEqual(pictureOf(Uint8ClampedArray.from(APPLE)));
  });

  it('takes the paper away and leaves the thing, in few colours', () => {
    const { picture, groundStays } = pictureOf(APPLE);
    expect(groundStays).toBe(false);
    expect(picture.parts.map(([fill]) => fill)).toHaveLength(3);
    expect(picture.parts[0]?.[0]).toMatch(/^#c[0-9a-f]{5}$/);
    expect(knowOwnPicture(picture, 'test').ok).toBe(true);
  });

  it.each(['circle', 'square'] as const)(
    'keeps to its limits as a %s, whatever it is given',
    (crop) => {
      for (const cutOut of [true, false]) {
        for (const colours of [2, 6]) {
          const made = simplified(NOISE, { crop, colours, cutOut });
          const isKnown = 'picture' in made && knowOwnPicture(made.picture, 'test').ok;
          expect(isKnown || ('fault' in made && made.fault === 'too-fine')).toBe(true);
          const parts = 'picture' in made ? made.picture.parts : [];
          expect(JSON.stringify(parts).length).toBeLessThan(MOST_PICTURE_CHARACTERS + 200);
          expect(parts.length).toBeLessThanOrEqual(MOST_PICTURE_PARTS);
        }
      }
    },
  );

  it('makes nothing of one colour', () => {
    expect(
      simplified(
        pixelsOf(() => PAPER),
        WISHES,
      ),
    ).toEqual({ fault: 'one-colour' });
  });
});

describe('the header of a file', () => {
  const jpeg = (width: number, height: number) => {
    const size = [height >> 8, height & 255, width >> 8, width & 255];
    return new Uint8Array([
      0xff,
      0xd8,
      0xff,
      0xe0,
      0,
      4,
      0,
      0,
      0xff,
      0xc0,
      0,
      17,
      8,
      ...size,
      3,
      1,
    ]);
  };

  it('of a JPEG tells its size (ITU-T T.81, from memory)', () => {
    expect(readHeader(jpeg(4000, 3000))).toEqual({
      kind: 'jpeg',
      width: 4000,
      height: 3000,
    } satisfies ImageHeader);
  });

  it('of more than 40 million pixels is refused', () => {
    expect(readHeader(jpeg(10_000, 6_000))).toBe('too-large');
  });

  it('of a drawing is told from that of no picture', () => {
    const bytes = (text: string) => new TextEncoder().encode(text);
    expect(readHeader(bytes('<?xml version="1.0"?><svg onload="x"/>'))).toBe('drawing');
    expect(readHeader(bytes('words'))).toBe('unknown');
    expect(readHeader(bytes(''))).toBe('empty');
  });
});
