// What the arrangement of tasks promises: each has its room, none touches another, all lie inside.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arrangeTasks, mostThatFit, TASK_GAP_MM } from './arrange.ts';

const AREA = { left: 12, top: 12, width: 186, height: 255 };
const room = fc.record({
  widthMm: fc.integer({ min: 10, max: 200 }),
  heightMm: fc.integer({ min: 10, max: 270 }),
});
const rooms = fc.array(room, { minLength: 1, maxLength: 12 });

describe('tasks on a page', () => {
  it('have the room they need, lie inside the area, and leave the gap between them', () => {
    fc.assert(
      fc.property(rooms, (needed) => {
        const places = arrangeTasks(needed, AREA);
        if (!places) return;
        for (const [index, place] of places.entries()) {
          expect(place.width).toBeGreaterThanOrEqual(needed[index]?.widthMm ?? 0);
          expect(place.height).toBeGreaterThanOrEqual(needed[index]?.heightMm ?? 0);
          expect(place.left).toBeGreaterThanOrEqual(AREA.left - 1e-9);
          expect(place.left + place.width).toBeLessThanOrEqual(AREA.left + AREA.width + 1e-9);
          expect(place.top + place.height).toBeLessThanOrEqual(AREA.top + AREA.height + 1e-9);
          for (const other of places.slice(index + 1)) {
            const across = Math.max(
              other.left - place.left - place.width,
              place.left - other.left - other.width,
            );
            const down = Math.max(
              other.top - place.top - place.height,
              place.top - other.top - other.height,
            );
            expect(Math.max(across, down)).toBeGreaterThanOrEqual(TASK_GAP_MM - 1e-9);
          }
        }
      }),
    );
  });

  it('stand under one another while they can, side by side only where they must', () => {
    const narrow = { widthMm: 60, heightMm: 60 };
    const lefts = (count: number) =>
      new Set(
        arrangeTasks(
          Array.from({ length: count }, () => narrow),
          AREA,
        )?.map(({ left }) => left),
      ).size;
    expect(lefts(3)).toBe(1);
    expect(lefts(6)).toBe(2);
  });

  it('are refused where one is wider than the page or all are too high', () => {
    expect(arrangeTasks([{ widthMm: 187, heightMm: 10 }], AREA)).toBeUndefined();
    expect(arrangeTasks([{ widthMm: 100, heightMm: 256 }], AREA)).toBeUndefined();
    expect(mostThatFit([{ widthMm: 187, heightMm: 10 }], AREA)).toBe(0);
  });

  it('fit up to the number worked out by hand', () => {
    // Wide tasks of 55 mm: 4 · 55 + 3 · 12 = 256 > 255, so three.
    const wide = Array.from({ length: 12 }, () => ({ widthMm: 180, heightMm: 55 }));
    expect(mostThatFit(wide, AREA)).toBe(3);
    // Tasks of 80 × 70 mm: two columns (2 · 80 + 12 ≤ 186), three rows (3 · 70 + 24 ≤ 255).
    const narrow = Array.from({ length: 12 }, () => ({ widthMm: 80, heightMm: 70 }));
    expect(mostThatFit(narrow, AREA)).toBe(6);
  });
});
