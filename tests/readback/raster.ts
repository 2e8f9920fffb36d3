// Turns pages into pixels with an independent program, and finds connected areas in them.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export interface Raster {
  readonly width: number;
  readonly height: number;
  /** Three bytes a pixel: red, green, blue. */
  readonly rgb: Uint8Array;
  readonly dpi: number;
}

export interface Area {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly pixels: number;
  /** Label in the map that `areasOf` returns. */
  readonly label: number;
}

/** The pages of a PDF as pixels, drawn by poppler's pdftoppm. */
export function rasterise(pdf: Uint8Array, dpi: number): Raster[] {
  const folder = mkdtempSync(join(tmpdir(), 'samewise-raster-'));
  try {
    writeFileSync(join(folder, 'in.pdf'), pdf);
    execFileSync('pdftoppm', ['-r', String(dpi), join(folder, 'in.pdf'), join(folder, 'page')]);
    const files = readdirSync(folder).filter((name) => name.endsWith('.ppm'));
    return files.toSorted().map((name) => readPpm(readFileSync(join(folder, name)), dpi));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Reads the plain binary form P6 of the Netpbm formats. */
function readPpm(bytes: Buffer, dpi: number): Raster {
  const head = /^P6\s(\d+)\s(\d+)\s255\s/.exec(bytes.toString('latin1', 0, 40));
  if (!head) throw new Error('not a P6 image');
  return {
    width: Number(head[1]),
    height: Number(head[2]),
    rgb: bytes.subarray(head[0].length),
    dpi,
  };
}

export type Rgb = readonly [number, number, number];

export function pixelAt({ rgb, width }: Raster, x: number, y: number): Rgb {
  const at = (y * width + x) * 3;
  return [rgb[at] ?? 0, rgb[at + 1] ?? 0, rgb[at + 2] ?? 0];
}

/**
 * The areas of touching pixels (eight neighbours) that `belongs` accepts, in reading order of their top left
 * corner, with a map from pixel to label.
 */
export function areasOf(
  raster: Raster,
  belongs: (pixel: Rgb) => boolean,
): { areas: Area[]; labels: Int32Array } {
  const { width, height } = raster;
  const labels = new Int32Array(width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) if (!belongs(pixelAt(raster, x, y))) labels[y * width + x] = -1;
  }
  const areas: Area[] = [];
  for (let start = 0; start < labels.length; start++) {
    if (labels[start] === 0) areas.push(flood(labels, width, height, start, areas.length + 1));
  }
  return { areas, labels };
}

function flood(
  labels: Int32Array,
  width: number,
  height: number,
  start: number,
  label: number,
): Area {
  const stack = [start];
  labels[start] = label;
  let [left, right, top, bottom, pixels] = [width, 0, height, 0, 0];
  for (let at = stack.pop(); at !== undefined; at = stack.pop()) {
    const [x, y] = [at % width, Math.floor(at / width)];
    [left, right, top, bottom] = [
      Math.min(left, x),
      Math.max(right, x),
      Math.min(top, y),
      Math.max(bottom, y),
    ];
    pixels++;
    for (let ny = Math.max(0, y - 1); ny <= Math.min(height - 1, y + 1); ny++) {
      for (let nx = Math.max(0, x - 1); nx <= Math.min(width - 1, x + 1); nx++) {
        const next = ny * width + nx;
        if (labels[next] === 0) {
          labels[next] = label;
          stack.push(next);
        }
      }
    }
  }
  return { left, right, top, bottom, pixels, label };
}

export function isInside(inner: Area, outer: Area): boolean {
  return (
    inner.left > outer.left &&
    inner.right < outer.right &&
    inner.top > outer.top &&
    inner.bottom < outer.bottom
  );
}

/** A pixel clearly not paper: any channel well below white. */
export function isInked([red, green, blue]: Rgb): boolean {
  return Math.min(red, green, blue) < 215;
}

/** Near-black ink: all channels low. */
export function isDark([red, green, blue]: Rgb): boolean {
  return Math.max(red, green, blue) < 110;
}

/** The ink of lines and letters, black included, brown not. */
export function isInk([red, green, blue]: Rgb): boolean {
  return Math.max(Math.abs(red - 27), Math.abs(green - 42), Math.abs(blue - 46)) < 48;
}
