// The worker that looks for a QR code in a picture, at one size after another.
import jsQR from 'jsqr';
import type { Picture, Reading } from './qr-reader.ts';

/**
 * Longest sides in pixels: found by trial with a page and a close look at its foot, both noisy. The
 * decoder wants two to ten pixels for a module; a smaller size also averages the noise away.
 */
const PHOTO_SIDES = [1200, 2000, 600, 300, 2700];
const FRAME_SIDES = [640, 1280];
/** The most that is held of a photo, however large its file is. */
const MOST_SIDE = Math.max(...PHOTO_SIDES);
/** Wide enough to tell a photo's proportions within half a percent. */
const PROBE_SIDE = 200;

self.addEventListener('message', async (event: MessageEvent<Picture>) => {
  const reading = await readingOf(event.data).catch((): Reading => ({ kind: 'broken' }));
  self.postMessage(reading);
});

async function readingOf(picture: Picture): Promise<Reading> {
  const isPhoto = picture instanceof Blob;
  const bitmap = isPhoto ? await bitmapOf(picture).catch(() => undefined) : picture;
  if (bitmap === undefined) return { kind: 'no-picture' };
  try {
    for (const side of isPhoto ? PHOTO_SIDES : FRAME_SIDES) {
      const text = textIn(pixelsOf(bitmap, side));
      if (text !== '') return { kind: 'text', text };
    }
    return { kind: 'nothing' };
  } finally {
    bitmap.close();
  }
}

/** The photo with a longest side of `MOST_SIDE`; its full size is never asked for. */
async function bitmapOf(photo: Blob): Promise<ImageBitmap> {
  const probe = await createImageBitmap(photo, { resizeWidth: PROBE_SIDE });
  const { width, height } = sizeWithin(probe, MOST_SIDE);
  probe.close();
  return createImageBitmap(photo, {
    resizeWidth: width,
    resizeHeight: height,
    resizeQuality: 'high',
  });
}

function pixelsOf(bitmap: ImageBitmap, side: number): ImageData {
  const { width, height } = sizeWithin(bitmap, side);
  const pen = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true });
  if (pen === null) throw new Error('the browser gives no canvas to draw on');
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(bitmap, 0, 0, width, height);
  return pen.getImageData(0, 0, width, height);
}

interface Size {
  readonly width: number;
  readonly height: number;
}

function sizeWithin({ width, height }: Size, side: number): Size {
  const scale = side / Math.max(width, height);
  const scaled = (length: number) => Math.max(1, Math.round(length * scale));
  return { width: scaled(width), height: scaled(height) };
}

/** The text of a QR code; empty for none, and where the decoder stumbles over what only looks like one. */
function textIn({ data, width, height }: ImageData): string {
  try {
    return jsQR(data, width, height, { inversionAttempts: 'dontInvert' })?.data ?? '';
  } catch {
    return '';
  }
}
