// The ink of pages whose area is known from geometry.
import { describe, expect, it } from 'vitest';
import { circlePath, linePath, moveBy, rectanglePath, scaleBy, turnBy } from '../base/index.ts';
import {
  box,
  filled,
  INK,
  type Page,
  type SceneNode,
  stroked,
  text,
  WHITE,
} from '../page/index.ts';
import { coverageOf } from './coverage.ts';

const SIDE_MM = 100;

/** The inked area in mm² of a page of 100 mm by 100 mm. */
function inkOf(...nodes: readonly SceneNode[]): number {
  const page: Page = { widthMm: SIDE_MM, heightMm: SIDE_MM, nodes, title: 'ink' };
  return coverageOf(page) * SIDE_MM * SIDE_MM;
}

/** Within half a percent, or 1 mm². */
function expectArea(found: number, mm2: number): void {
  expect(Math.abs(found - mm2), `${found} for ${mm2}`).toBeLessThan(Math.max(1, 0.005 * mm2));
}

const square = (left: number, top: number, side: number) => rectanglePath(left, top, side, side);

describe('coverageOf', () => {
  it('is none for an empty page and for white on it, all for a page that is inked over', () => {
    expect(inkOf()).toBe(0);
    expect(inkOf(filled(square(10, 10, 30), WHITE))).toBe(0);
    expectArea(inkOf(filled(square(-10, -10, 200), INK)), SIDE_MM ** 2);
  });

  it('counts a filled area in any colour, however light', () => {
    expectArea(inkOf(filled(circlePath(50, 50, 20), '#fffffe')), Math.PI * 400);
    expectArea(inkOf(filled(square(20, 20, 30), '#ffe21a')), 900);
  });

  it('counts what lies over another thing once, and white over ink as paper', () => {
    const under = filled(square(10, 10, 40), INK);
    expectArea(inkOf(under, filled(square(30, 30, 40), '#eb252f')), 1600 + 1600 - 400);
    expectArea(inkOf(under, filled(square(20, 20, 10), WHITE)), 1500);
    expectArea(inkOf(filled(square(20, 20, 10), WHITE), under), 1600);
    expectArea(inkOf(under, stroked(square(20, 20, 10), { colour: WHITE, widthMm: 2 })), 1600 - 79);
  });

  it('follows the rule of a fill', () => {
    const path = [...square(10, 10, 40), ...square(20, 20, 20)];
    expectArea(inkOf(filled(path, INK)), 1600);
    expectArea(inkOf({ ...filled(path, INK), rule: 'evenodd' }), 1200);
  });

  it('counts a line by its width, its round or square ends and corners', () => {
    const level = linePath([
      { x: 20, y: 50.1 },
      { x: 70, y: 50.1 },
    ]);
    expectArea(inkOf(stroked(level, { widthMm: 4 })), 200 + Math.PI * 4);
    expectArea(inkOf(stroked(level, { widthMm: 4, ends: 'square' })), 200);
    const corner = linePath([
      { x: 20, y: 60 },
      { x: 20, y: 20 },
      { x: 60, y: 20 },
    ]);
    expectArea(inkOf(stroked(corner, { widthMm: 6, ends: 'square' })), 2 * 40 * 6 + 9 - 9);
    expectArea(
      inkOf(stroked(corner, { widthMm: 6 })),
      2 * 40 * 6 - 9 + (Math.PI * 9) / 4 + Math.PI * 9,
    );
    expectArea(inkOf(stroked(circlePath(50, 50, 20), { widthMm: 2 })), 2 * Math.PI * 20 * 2);
    expectArea(inkOf(box(10, 10, 40, 40, { radiusMm: 0, widthMm: 2 })), 1600 - 36 * 36 - 0.86);
  });

  it('leaves out the gaps of a dashed line, at whose ends its caps stand', () => {
    const level = linePath([
      { x: 10, y: 50.1 },
      { x: 70, y: 50.1 },
    ]);
    const stroke = { widthMm: 2, dashMm: [6, 4] };
    expectArea(inkOf(stroked(level, { ...stroke, ends: 'square' })), 6 * 12);
    expectArea(inkOf(stroked(level, stroke)), 6 * 12 + 6 * Math.PI);
  });

  it('cuts off what lies outside a clip, and outside the page', () => {
    const children = [filled(square(10, 10, 40), INK)];
    expectArea(inkOf({ kind: 'group', clip: circlePath(30, 30, 10), children }), Math.PI * 100);
    const inner: SceneNode = { kind: 'group', clip: square(30, 10, 40), children };
    expectArea(inkOf({ kind: 'group', clip: square(10, 30, 40), children: [inner] }), 400);
    expectArea(inkOf(filled(square(80, 80, 40), INK)), 400);
  });

  it('takes what is moved, turned, mirrored and enlarged as it comes to lie, lines included', () => {
    const ring = stroked(circlePath(0, 0, 10), { widthMm: 2 });
    const placed = (transform: readonly [number, number, number, number, number, number]) =>
      inkOf({
        kind: 'group',
        transform: moveBy(50, 50),
        children: [{ kind: 'group', transform, children: [ring] }],
      });
    expectArea(placed(turnBy(30)), 2 * Math.PI * 10 * 2);
    expectArea(placed(scaleBy(-1, 1)), 2 * Math.PI * 10 * 2);
    expectArea(placed(scaleBy(2)), 2 * Math.PI * 20 * 4);
  });

  it('counts words by the outlines of their letters', () => {
    const [small, large] = [4, 8].map((em) => inkOf(text('Which one?', 5, 50, em)));
    expect(small).toBeGreaterThan(5);
    expect((large ?? 0) / (small ?? 1)).toBeCloseTo(4, 0);
    expect(inkOf(text('Which one?', 5, 50, 4, { colour: WHITE }))).toBe(0);
  });
});
