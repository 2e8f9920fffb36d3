// Pictures: their outline is what their parts cover, and they are credited as their licence asks.
import { readFileSync } from 'node:fs';
import { Resvg } from '@resvg/resvg-js';
import { describe, expect, it } from 'vitest';
import type { Path } from '../base/index.ts';
import { differencesOf, fairlyDifferent, sameFigure } from './differences.ts';
import type { Figure } from './figure.ts';
import { PICTURES } from './form-names.ts';
import { figureName } from './names.ts';
import { outlineOf, partsOf } from './outline.ts';
import { categoryOf, PICTURE_CATEGORIES, PICTURE_CREDIT, picturesOf } from './pictures.ts';

const SIDE = 96;

function textOf(path: Path): string {
  return path.map(([letter, ...numbers]) => letter + numbers.join(' ')).join('');
}

/** Which pixels are inked, by another renderer. */
function inked(shapes: readonly string[]): readonly boolean[] {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${SIDE}" height="${SIDE}" viewBox="-0.5 -0.5 1 1">${shapes.join('')}</svg>`;
  const { pixels } = new Resvg(svg, { font: { loadSystemFonts: false } }).render();
  return Array.from({ length: SIDE * SIDE }, (_, pixel) => (pixels[4 * pixel + 3] ?? 0) > 127);
}

describe('a picture', () => {
  it('is covered by its outline, which covers no more, within three hundredths of its pixels', () => {
    for (const form of PICTURES) {
      const parts = inked(
        partsOf({ form }).map(
          ({ path, fill, rule }) =>
            `<path d="${textOf(path)}" fill="${fill}" fill-rule="${rule}"/>`,
        ),
      );
      const whole = inked([`<path d="${textOf(outlineOf({ form }).path)}"/>`]);
      const other = parts.filter((isInked, pixel) => isInked !== whole[pixel]).length;
      expect(other / parts.filter(Boolean).length, form).toBeLessThan(0.03);
    }
  });

  it('has flat colours only', () => {
    for (const form of PICTURES) {
      for (const { fill } of partsOf({ form })) expect(fill, form).toMatch(/^#[0-9a-f]{6}$/);
    }
  });

  it('has parts, and no other form has', () => {
    for (const form of PICTURES) expect(partsOf({ form }).length, form).toBeGreaterThan(0);
    expect(partsOf({ form: 'circle' })).toEqual([]);
  });

  it('turns, shrinks and mirrors its parts with its outline', () => {
    const figure: Figure = { form: 'picture-duck', turn: 90, size: 0.5, mirrored: true };
    const covered = inked(partsOf(figure).map(({ path }) => `<path d="${textOf(path)}"/>`));
    const whole = inked([`<path d="${textOf(outlineOf(figure).path)}"/>`]);
    expect(covered.filter((isInked, pixel) => isInked !== whole[pixel]).length).toBeLessThan(40);
  });

  it('is of one category; each category has at least eight', () => {
    const counted = PICTURE_CATEGORIES.map((category) => picturesOf(category).length);
    expect(Math.min(...counted)).toBeGreaterThanOrEqual(8);
    expect(counted.reduce((sum, count) => sum + count, 0)).toBe(PICTURES.length);
    expect(categoryOf('picture-cat')).toBe('animals');
    expect(categoryOf('circle')).toBe(undefined);
  });

  it('in its own colours is another figure than its silhouette, fairly', () => {
    const [own, shadow]: readonly [Figure, Figure] = [
      { form: 'picture-cat' },
      { form: 'picture-cat', colour: 'black' },
    ];
    expect(sameFigure(own, shadow)).toBe(false);
    expect(differencesOf(own, shadow)).toEqual({ fill: true });
    expect(fairlyDifferent(own, shadow)).toBe(true);
    expect(sameFigure(shadow, { form: 'picture-cat', fill: 'solid' })).toBe(true);
  });

  it('is named plainly, and as a shape where only its silhouette shows', () => {
    expect(figureName({ form: 'picture-sailing-boat' })).toBe('sailing boat');
    expect(figureName({ form: 'picture-cat', colour: 'black', size: 0.4 })).toBe(
      'little black cat shape',
    );
  });
});

describe('the credit', () => {
  it('names the maker and the licence that the licence file holds', () => {
    const licence = readFileSync(new URL('../../assets/pictures/LICENSE', import.meta.url), 'utf8');
    expect(licence).toMatch('Copyright (c) Microsoft Corporation');
    expect(licence).toMatch('MIT License');
    expect(PICTURE_CREDIT).toMatch('copyright (c) Microsoft Corporation');
    expect(PICTURE_CREDIT).toMatch('MIT License');
  });
});
