// The eight textures, rasterised and told apart by simple counts of their pixels.
import { Resvg } from '@resvg/resvg-js';
import { describe, expect, it } from 'vitest';
import type { Path } from '../base/index.ts';
import { TEXTURES, type Texture } from './figure.ts';
import { texturePath } from './textures.ts';

const SIDE_MM = 14;
const PIXELS = 140;

function isInkedIn(texture: Texture): (x: number, y: number) => boolean {
  const marks = texturePath(texture, SIDE_MM, SIDE_MM);
  const paint =
    'filled' in marks
      ? 'fill="black"'
      : `fill="none" stroke="black" stroke-linecap="round" stroke-linejoin="round" stroke-width="${marks.widthMm}"`;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${SIDE_MM} ${SIDE_MM}"><path d="${dataOf(marks.path)}" ${paint}/></svg>`;
  const { pixels } = new Resvg(svg, {
    background: 'white',
    fitTo: { mode: 'width', value: PIXELS },
  }).render();
  return (x, y) => (pixels[4 * (y * PIXELS + x)] ?? 255) < 128;
}

function dataOf(path: Path): string {
  return path.map(([letter, ...numbers]) => letter + numbers.join(' ')).join('');
}

interface Look {
  readonly ink: number;
  /** Changes between ink and paper along a level and an upright line, mean over all lines. */
  readonly across: number;
  readonly down: number;
  /** The same along lines that rise to the right. */
  readonly aslant: number;
  /** Spread of the ink share of level and of upright lines: high where lines run along. */
  readonly rows: number;
  readonly columns: number;
}

function lookOf(texture: Texture): Look {
  const isInked = isInkedIn(texture);
  const all = Array.from({ length: PIXELS }, (_, index) => index);
  const level = all.map((y) => all.map((x) => isInked(x, y)));
  const upright = all.map((x) => all.map((y) => isInked(x, y)));
  const rising = all.map((start) =>
    all.map((step) => isInked((start + step) % PIXELS, PIXELS - 1 - step)),
  );
  const mean = (values: readonly number[]) => values.reduce((sum, v) => sum + v, 0) / values.length;
  const inkOf = (line: readonly boolean[]) => mean(line.map(Number));
  const changes = (line: readonly boolean[]) =>
    line.filter((v, i) => i > 0 && v !== line[i - 1]).length;
  const spread = (values: readonly number[]) =>
    Math.sqrt(mean(values.map((v) => (v - mean(values)) ** 2)));
  return {
    ink: mean(level.map(inkOf)),
    across: mean(level.map(changes)),
    down: mean(upright.map(changes)),
    aslant: mean(rising.map(changes)),
    rows: spread(level.map(inkOf)),
    columns: spread(upright.map(inkOf)),
  };
}

const looks = new Map(TEXTURES.map((texture) => [texture, lookOf(texture)]));

describe('texturePath', () => {
  it('inks between a fifth and three fifths, so that both ink and paper show', () => {
    for (const [texture, { ink }] of looks) {
      expect(ink, texture).toBeGreaterThan(0.2);
      expect(ink, texture).toBeLessThan(0.6);
    }
  });

  it('gives no two textures the same look: some count differs by half or more', () => {
    const entries = [...looks];
    entries.forEach(([one, look], index) => {
      for (const [other, otherLook] of entries.slice(index + 1)) {
        const ratios = (['ink', 'across', 'down', 'aslant', 'rows', 'columns'] as const).map(
          (count) => {
            const [low, high] = [look[count], otherLook[count]].sort((a, b) => a - b);
            return ((high ?? 0) + 0.05) / ((low ?? 0) + 0.05);
          },
        );
        expect(Math.max(...ratios), `${one} and ${other}`).toBeGreaterThan(1.5);
      }
    });
  });

  it('runs upright stripes upright and level stripes level', () => {
    expect(looks.get('upright-stripes')?.down).toBe(0);
    expect(looks.get('level-stripes')?.across).toBe(0);
  });

  it('repeats at least twice each way in a figure of 14 mm, unless its lines run that way', () => {
    for (const [texture, { across, down }] of looks) {
      if (texture !== 'level-stripes') expect(across, texture).toBeGreaterThanOrEqual(3.5);
      if (texture !== 'upright-stripes') expect(down, texture).toBeGreaterThanOrEqual(3.5);
    }
  });

  it('covers the rectangle to its corners', () => {
    for (const texture of TEXTURES) {
      const isInked = isInkedIn(texture);
      const corners = [0, PIXELS - 45].flatMap((x) => [0, PIXELS - 45].map((y) => [x, y] as const));
      for (const [left, top] of corners) {
        const cells = Array.from({ length: 45 * 45 }, (_, i) =>
          isInked(left + (i % 45), top + Math.floor(i / 45)),
        );
        expect(cells.some(Boolean), texture).toBe(true);
      }
    }
  });
});
