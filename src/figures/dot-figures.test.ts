// Dot quantities under control: ink and spread do not tell how many there are.
import { describe, expect, it } from 'vitest';
import { pathBounds } from '../base/index.ts';
import { differencesOf, fairlyDifferent, sameFigure } from './differences.ts';
import { DOT_CONTROLS, dotsOf, SPREAD_LAYOUTS } from './dot-figures.ts';
import { dotPlaces, MOST_DOTS, mostDotSize } from './dots.ts';
import { DOT_LAYOUTS, type Figure, layoutOf } from './figure.ts';
import { figureSchema } from './figure-schema.ts';
import { outlineOf } from './outline.ts';

const COUNTS = Array.from({ length: MOST_DOTS }, (_, index) => index + 1);

/** Ink of all dots in cell areas: each closed part of the outline is a circle as wide as its bounds. */
function inkOf(figure: Figure): number {
  const { path } = outlineOf(figure);
  const starts = path.flatMap(([letter], index) => (letter === 'M' ? [index] : []));
  const areas = starts.map((start, dot) => {
    const { left, right } = pathBounds(path.slice(start, starts[dot + 1]));
    return (Math.PI / 4) * (right - left) ** 2;
  });
  return areas.reduce((sum, area) => sum + area, 0);
}

/** Root-mean-square distance of the dots from their middle, in cell sides. */
function spreadOf({ count = 1, ...figure }: Figure): number {
  const places = dotPlaces(count, layoutOf(figure));
  const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
  const [x, y] = [mean(places.map((place) => place.x)), mean(places.map((place) => place.y))];
  return Math.sqrt(mean(places.map((place) => (place.x - x) ** 2 + (place.y - y) ** 2)));
}

describe('dotsOf', () => {
  it('gives as many dots as asked for, in figures that a file may hold', () => {
    for (const control of DOT_CONTROLS) {
      for (const layout of SPREAD_LAYOUTS) {
        for (const count of COUNTS) {
          const figure: Figure = { form: 'dots', layout, ...dotsOf(count, control) };
          expect(figure.count).toBe(count);
          expect(figureSchema.parse(figure), `${count} ${layout}`).toEqual(figure);
        }
      }
    }
  });

  it('gives all numbers the same ink where area is controlled, within a hundredth', () => {
    for (const layout of SPREAD_LAYOUTS) {
      const inks = COUNTS.map((count) => inkOf({ form: 'dots', layout, ...dotsOf(count, 'area') }));
      expect(Math.max(...inks) / Math.min(...inks), layout).toBeLessThan(1.01);
    }
  });

  it('keeps to layouts that spread two to six dots alike, and no more for more', () => {
    const spreads = COUNTS.slice(1).map((count) => {
      const all = SPREAD_LAYOUTS.map((layout) => spreadOf({ form: 'dots', count, layout }));
      for (const [index, spread] of all.entries()) {
        expect(spread, `${count} ${SPREAD_LAYOUTS[index]}`).toBeGreaterThan(0.27);
        expect(spread, `${count} ${SPREAD_LAYOUTS[index]}`).toBeLessThan(0.38);
      }
      return all.reduce((sum, spread) => sum + spread, 0) / all.length;
    });
    expect(Math.max(...spreads) / Math.min(...spreads)).toBeLessThan(1.2);
  });
});

describe('the size of dots', () => {
  const four: Figure = { form: 'dots', count: 4 };

  it('is a difference that is seen, but not one that a task rests on', () => {
    const big: Figure = { ...four, dotSize: 1.3 };
    expect(sameFigure(four, big)).toBe(false);
    expect(differencesOf(four, big)).toEqual({ dotRatio: 1.3 });
    expect(fairlyDifferent(four, big)).toBe(false);
    expect(sameFigure(four, { ...four, dotSize: 1 })).toBe(true);
  });

  it('is refused where dots would touch or leave their cell, or where there are none', () => {
    for (const layout of DOT_LAYOUTS) {
      for (const count of COUNTS) {
        const most = mostDotSize(count, layout);
        const figure: Figure = { form: 'dots', count, layout };
        expect(figureSchema.safeParse({ ...figure, dotSize: most }).success).toBe(true);
        expect(figureSchema.safeParse({ ...figure, dotSize: most + 0.1 }).success).toBe(false);
      }
    }
    expect(figureSchema.safeParse({ form: 'star', dotSize: 1 }).success).toBe(false);
    expect(figureSchema.safeParse({ ...four, dotSize: 0.1 }).success).toBe(false);
  });

  it('leaves the places where they are', () => {
    const at = (figure: Figure) => {
      const { left, right } = pathBounds(outlineOf(figure).path);
      return (left + right) / 2;
    };
    expect(at({ ...four, dotSize: 0.6 })).toBeCloseTo(at(four), 5);
  });
});
