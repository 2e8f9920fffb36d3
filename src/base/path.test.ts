import { describe, expect, test } from 'vitest';
import {
  compose,
  flattenPath,
  moveBy,
  pathBounds,
  scaleBy,
  transformPath,
  transformPoint,
  turnBy,
} from './path.ts';
import { circlePath, rectanglePath } from './shapes.ts';

describe('paths', () => {
  test('a quarter turn clockwise brings what points right to point down, exactly', () => {
    expect(transformPoint(turnBy(90), 1, 0)).toEqual({ x: 0, y: 1 });
    expect(transformPoint(turnBy(-90), 1, 0)).toEqual({ x: 0, y: -1 });
    expect(transformPoint(turnBy(360), 3, 4)).toEqual({ x: 3, y: 4 });
  });

  test('composing maps is doing one after the other', () => {
    const point = transformPoint(compose(moveBy(10, 0), scaleBy(2, 3)), 1, 1);
    expect(point).toEqual({ x: 12, y: 3 });
  });

  test('a circle of four curves is round to within 0.03 % of its radius', () => {
    const [polygon] = flattenPath(circlePath(5, 5, 10));
    const radii = (polygon ?? []).map(({ x, y }) => Math.hypot(x - 5, y - 5));
    // the known greatest error of the four-curve circle is 0.0273 % outward
    expect(Math.min(...radii)).toBeGreaterThan(9.9999);
    expect(Math.max(...radii)).toBeLessThan(10.0028);
  });

  test('bounds follow the path through a map', () => {
    const bounds = pathBounds(
      transformPath(rectanglePath(0, 0, 4, 2, 0.5), compose(moveBy(1, 1), turnBy(90))),
    );
    expect(bounds).toEqual({ left: -1, top: 1, right: 1, bottom: 5 });
  });
});
