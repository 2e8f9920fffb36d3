// Where shared figures may stand: against a list of all ways, and on finished pages.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../../tests/seed.ts';
import { randomFrom } from '../../base/index.ts';
import { columnsOf } from './columns.ts';
import { generate } from './generate.ts';
import { limitsOf } from './limits.ts';
import { planPage } from './page-plan.ts';
import { spreadShared } from './places.ts';
import { type BoxValues, PARAMETERS, type Printed } from './task.ts';

const COLOUR = { print: 'colour' } as const;

/** All ways to place figures 0 up to `shared` in boxes side by side, none in the same place twice running. */
function listRows(boxes: number, places: number, shared: number): readonly string[] {
  let inBox: readonly (readonly number[])[] = [[]];
  for (let figure = 0; figure < shared; figure++) {
    inBox = inBox.flatMap((box) =>
      Array.from({ length: places }, (_, place) => place)
        .filter((place) => !box.includes(place))
        .map((place) => [...box, place]),
    );
  }
  let rows: readonly (readonly (readonly number[])[])[] = [[]];
  for (let box = 0; box < boxes; box++) {
    rows = rows.flatMap((row) =>
      inBox
        .filter((next) => !row.at(-1)?.some((place, figure) => place === next[figure]))
        .map((next) => [...row, next]),
    );
  }
  return rows.map((row) => JSON.stringify(row));
}

describe('R7 a shared figure keeps its place from no box to the next', () => {
  test('all ways without a kept place come out, and nothing else', () => {
    // By hand: 3 places, then 2 others, then 2 others again; for two figures 6 orders, then the 2 without
    // a kept place that put the third elsewhere and 1 that only swaps the two: 3 each time.
    expect(listRows(3, 3, 1).length).toBe(3 * 2 * 2);
    expect(listRows(3, 3, 2).length).toBe(6 * 3 * 3);
    const random = randomFrom(testSeed('in-every-box, places'));
    for (const shared of [1, 2]) {
      const found = new Set<string>();
      for (let run = 0; run < 1200; run++) {
        found.add(JSON.stringify(spreadShared(3, 3, 3, shared, random)));
      }
      expect([...found].sort()).toEqual([...listRows(3, 3, shared)].sort());
    }
  });

  test('there is a way for every number of boxes, columns, places and shared figures', () => {
    const random = randomFrom(testSeed('in-every-box, places of all numbers'));
    for (let boxes = 2; boxes <= 6; boxes++) {
      for (const columns of [1, 2, 3, boxes]) {
        for (let shared = 1; shared <= 3; shared++) {
          const least = columns === 2 && boxes > 2 ? Math.max(3, shared + 1) : shared + 1;
          for (let places = least; places <= 9; places++) {
            const spread = spreadShared(boxes, columns, places, shared, random);
            for (const [index, box] of spread.entries()) {
              expect(new Set(box).size).toBe(shared);
              for (const other of [spread[index - 1], spread[index - columns]]) {
                for (const [figure, place] of box.entries())
                  expect(place).not.toBe(other?.[figure]);
              }
            }
          }
        }
      }
    }
  });
});

/** Middles of the shared figures from the middle of their box, box by box. */
function offsets(printed: Printed, key: readonly unknown[]) {
  const size = { widthMm: 400, heightMm: 400 };
  const plan = planPage(printed, size);
  const wanted = key.map((figure) => JSON.stringify(figure));
  return printed.boxes.map((box, index) => {
    const area = plan.boxes[index] ?? { left: 0, top: 0, width: 0, height: 0 };
    return {
      x: area.left,
      y: area.top,
      byFigure: wanted.map((figure) => {
        const at = box.figures.findIndex((shown) => JSON.stringify(shown) === figure);
        const point = plan.figures[index]?.[at] ?? { x: 0, y: 0 };
        return { at, dx: point.x - area.left, dy: point.y - area.top };
      }),
    };
  });
}

test('R7 on paper no shared figure lines up with itself in the box beside or below, in any layout', () => {
  const random = randomFrom(testSeed('in-every-box, lines of figures'));
  let checked = 0;
  while (checked < 150) {
    const values: BoxValues = {
      content: 'colours',
      response: 'point',
      boxes: random.int(2, 6),
      figures: random.int(2, 8),
      shared: random.int(1, 3),
      nearMisses: random.int(0, random.pick([3, 14])),
      layout: random.pick(PARAMETERS.layout.values),
      stickerMm: random.pick(PARAMETERS.stickerMm.values),
    };
    if (limitsOf(values, COLOUR).length > 0) continue;
    const { printed, answer } = generate(values, random.fork(), COLOUR);
    const boxes = offsets(printed, answer.figures);
    const columns = columnsOf(printed);
    for (const [index, box] of boxes.entries()) {
      for (const other of [boxes[index - 1], boxes[index - columns]]) {
        for (const [figure, { at, dx, dy }] of box.byFigure.entries()) {
          const there = other?.byFigure[figure];
          if (!there) continue;
          expect(there.at, JSON.stringify(values)).not.toBe(at);
          const apartMm = Math.hypot(there.dx - dx, there.dy - dy);
          expect(apartMm, JSON.stringify(values)).toBeGreaterThan(Number(values.stickerMm));
        }
      }
    }
    checked++;
  }
});
