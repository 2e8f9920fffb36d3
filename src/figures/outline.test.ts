// Outlines as printed: inside their cell, closed, simple, and as large as each other.
import { describe, expect, it } from 'vitest';
import { flattenPath, type Path, type Point, pathBounds } from '../base/index.ts';
import { DOT_LAYOUTS, type Figure, formOf } from './figure.ts';
import { FORMS, type FormId, isPicture, isSign, SHAPES } from './form-names.ts';
import { outlineOf } from './outline.ts';

const FIGURES: readonly Figure[] = [
  ...FORMS.filter((form) => form !== 'dots').map((form): Figure => ({ form })),
  ...DOT_LAYOUTS.flatMap((layout) =>
    [1, 2, 3, 4, 5, 6].map((count): Figure => ({ form: 'dots', count, layout })),
  ),
];

/** Forms made to fit a circle round the middle of the cell. */
function isRound(form: FormId): boolean {
  return isPicture(form) || form.startsWith('letter-');
}

/** Twice the signed area of a polygon, halved: positive when it runs clockwise on the page. */
function areaOf(polygon: readonly Point[]): number {
  const cross = polygon.map((point, index) => {
    const next = polygon[(index + 1) % polygon.length] as Point;
    return point.x * next.y - next.x * point.y;
  });
  return cross.reduce((sum, value) => sum + value, 0) / 2;
}

function shapeArea(path: Path): number {
  return Math.abs(flattenPath(path, 64).reduce((sum, polygon) => sum + areaOf(polygon), 0));
}

function cross(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

/** Whether two sides of a polygon cross within both. */
function sidesCross(polygon: readonly Point[]): boolean {
  const sides = polygon.map(
    (start, index) => [start, polygon[(index + 1) % polygon.length] as Point] as const,
  );
  return sides.some(([a, b], index) =>
    sides
      .slice(index + 2)
      .some(
        ([c, d]) =>
          cross(a, b, c) * cross(a, b, d) < -1e-12 && cross(c, d, a) * cross(c, d, b) < -1e-12,
      ),
  );
}

const size = (figure: Figure) => {
  const { left, right, top, bottom } = pathBounds(outlineOf(figure).path);
  return { width: right - left, height: bottom - top };
};

describe('an outline', () => {
  it('lies inside its cell at every turn of 15 degrees, mirrored or not, its pen included', () => {
    for (const figure of FIGURES.filter((each) => !isRound(formOf(each)))) {
      for (let turn = 0; turn < 360; turn += 15) {
        for (const mirrored of [false, true]) {
          const { path, drawn } = outlineOf({ ...figure, turn, mirrored });
          const reach = 0.50001 - (drawn?.widthShare ?? 0) / 2;
          const { left, right, top, bottom } = pathBounds(path);
          const furthest = Math.max(-left, right, -top, bottom);
          expect(furthest, `${JSON.stringify(figure)} turned ${turn}`).toBeLessThanOrEqual(reach);
        }
      }
    }
  });

  it('lies within half a cell of the middle, and so inside at every turn, for pictures and foreign letters', () => {
    for (const form of FORMS.filter(isRound)) {
      const points = flattenPath(outlineOf({ form }).path).flat();
      const reach = Math.max(...points.map(({ x, y }) => Math.hypot(x, y)));
      expect(reach, form).toBeLessThanOrEqual(0.5);
      expect(reach, form).toBeGreaterThan(isPicture(form) ? 0.48 : 0.15);
    }
  });

  it('is closed unless it is drawn as a line', () => {
    for (const figure of FIGURES) {
      const { path, drawn } = outlineOf(figure);
      if (drawn) continue;
      const starts = path.filter(([letter]) => letter === 'M').length;
      const ends = path.filter(([letter]) => letter === 'Z').length;
      expect(ends, JSON.stringify(figure)).toBe(starts);
    }
  });

  it('is drawn as a line for signs only, and for all of them but the dot', () => {
    for (const figure of FIGURES) {
      const form = formOf(figure);
      expect(outlineOf(figure).drawn !== undefined, form).toBe(isSign(form) && form !== 'sign-dot');
    }
  });

  it('of a shape is one loop that never crosses itself', () => {
    for (const form of SHAPES) {
      const polygons = flattenPath(outlineOf({ form }).path, 24);
      expect(polygons.length, form).toBe(1);
      expect(polygons.some(sidesCross), form).toBe(false);
    }
  });

  it('of a shape covers between a quarter and six tenths of the cell, so that none looks small', () => {
    for (const form of SHAPES) {
      const area = shapeArea(outlineOf({ form }).path);
      expect(area, form).toBeGreaterThan(0.25);
      expect(area, form).toBeLessThan(0.6);
    }
  });

  it('grows with the size in both directions and by its square in area', () => {
    for (const form of SHAPES) {
      const [full, half] = [outlineOf({ form }), outlineOf({ form, size: 0.5 })];
      expect(shapeArea(half.path) / shapeArea(full.path), form).toBeCloseTo(0.25, 3);
    }
    expect(outlineOf({ form: 'sign-plus', size: 0.5 }).drawn?.widthShare).toBe(
      (outlineOf({ form: 'sign-plus' }).drawn?.widthShare ?? 0) / 2,
    );
  });

  it('keeps its area when turned or mirrored', () => {
    for (const form of SHAPES) {
      const turned = outlineOf({ form, turn: 37, mirrored: true });
      expect(shapeArea(turned.path), form).toBeCloseTo(shapeArea(outlineOf({ form }).path), 3);
    }
  });

  it('of a figure without a form is a circle', () => {
    expect(outlineOf({ colour: 'red' })).toEqual(outlineOf({ form: 'circle' }));
  });
});

describe('shapes that are near to one another', () => {
  it('an oval is clearly no circle: its height is 0.62 of its width', () => {
    const { width, height } = size({ form: 'oval' });
    expect(height / width).toBeCloseTo(0.62, 2);
  });

  it('an oblong is clearly no square: its height is at most 0.6 of its width', () => {
    const { width, height } = size({ form: 'oblong' });
    expect(height / width).toBeLessThanOrEqual(0.6);
  });

  it('a diamond is clearly no turned square: it is at least 1.4 times as tall as wide', () => {
    const { width, height } = size({ form: 'diamond' });
    expect(height / width).toBeGreaterThanOrEqual(1.4);
  });

  it('a square and a circle are as wide as tall', () => {
    for (const form of ['square', 'circle', 'cross'] as const) {
      const { width, height } = size({ form });
      expect(height / width, form).toBeCloseTo(1, 4);
    }
  });
});

describe('letters', () => {
  const bounds = (form: Figure['form']) => pathBounds(outlineOf({ form }).path);

  it('stand on one baseline, capitals and small letters alike', () => {
    const flat = [...'AEFHIKLMNTXZ'].map((letter) => bounds(`capital-${letter}`).bottom);
    const small = [...'fhiklmnrvwxz'].map((letter) => bounds(`small-${letter}`).bottom);
    for (const bottom of [...flat, ...small]) expect(bottom).toBeCloseTo(flat[0] as number, 2);
  });

  it('keep the sizes of their font: a small x is clearly lower than a capital X', () => {
    const [small, capital] = [bounds('small-x'), bounds('capital-X')];
    const ratio = (small.bottom - small.top) / (capital.bottom - capital.top);
    expect(ratio).toBeGreaterThan(0.65);
    expect(ratio).toBeLessThan(0.75);
  });
});
