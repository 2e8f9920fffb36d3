// The drawn page measured: one line, even gaps, empty places as large as figures, stickers at their size.
import { describe, expect, test } from 'vitest';
import { boundsOf, groupsOf } from '../../../tests/scene-bounds.ts';
import { testSeed } from '../../../tests/seed.ts';
import { type Bounds, randomFrom } from '../../base/index.ts';
import type { Group } from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { draw, room } from './draw.ts';
import { generate } from './generate.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { type Answer, PARAMETERS, type Printed, type RowValues } from './task.ts';

const COLOUR = { print: 'colour' } as const;
/** A4 and Letter upright, less margins of 12 mm: the narrower is 210 mm (ISO 216) wide. */
const SHEET_MM = 210 - 24;

interface Drawn {
  readonly name: string;
  readonly values: RowValues;
  readonly printed: Printed;
  readonly answer: Answer;
  readonly size: Size;
}

function make(values: RowValues, seed: number, isWide: boolean): Drawn {
  const { printed, answer } = generate(values, randomFrom(seed), COLOUR);
  const least = room(printed);
  const size = isWide ? { widthMm: SHEET_MM, heightMm: least.heightMm + 30 } : least;
  return { name: JSON.stringify({ ...values, seed, isWide }), values, printed, answer, size };
}

const SEED = testSeed('continue-row, drawing');
/** Every step of colours with every response, and of the other contents a quarter, turn by turn. */
const ALL = LADDER.flatMap(({ values }, index) =>
  PARAMETERS.content.values.flatMap((content, look) =>
    PARAMETERS.response.values.flatMap((response, deed) => {
      const missing = response === 'ring' ? { missing: 1 } : {};
      const changed = { ...values, content, response, ...missing };
      const isLeftOut = content !== 'colours' && (index + look + deed) % 4 > 0;
      if (isLeftOut || limitsOf(changed, COLOUR).length > 0) return [];
      return [make(changed, SEED + index, (index + content.length) % 2 === 0)];
    }),
  ),
);

function rowOf({ printed, size }: Drawn): readonly Bounds[] {
  const [row] = groupsOf(draw(printed, size, COLOUR), 'row');
  return (row?.children ?? []).map((place) => boundsOf(place as Group));
}

function middle({ left, right }: Bounds): number {
  return (left + right) / 2;
}

describe('R10 on the drawn page', () => {
  test('every row fits a sheet across, in one line', () => {
    for (const drawn of ALL) {
      expect(room(drawn.printed).widthMm, drawn.name).toBeLessThanOrEqual(SHEET_MM);
      const row = rowOf(drawn);
      expect(row.length, drawn.name).toBe(drawn.values.shown + drawn.values.missing);
      const [top, bottom] = [
        Math.max(...row.map((place) => place.top)),
        Math.min(...row.map((place) => place.bottom)),
      ];
      expect(bottom, drawn.name).toBeGreaterThan(top);
    }
  });

  test('empty places stand at one distance from each other, 3 mm apart or more, and take 12 mm at least', () => {
    for (const drawn of ALL) {
      const row = rowOf(drawn).filter((_, place) => drawn.printed.row[place] === null);
      for (const { left, right } of row) {
        // A sticker's circle has the sticker's size, an outline to colour in that of its dot.
        const isFrame =
          drawn.values.response !== 'colour-in' && drawn.values.content !== 'textures';
        if (isFrame) expect(right - left, drawn.name).toBeGreaterThanOrEqual(12);
      }
      for (const [index, { right }] of row.slice(0, -1).entries()) {
        const next = row[index + 1];
        if (next) expect(next.left - right, drawn.name).toBeGreaterThanOrEqual(2.99);
      }
    }
  });

  test('gaps are even: dots and empty places have their middles equally far apart', () => {
    for (const drawn of ALL.filter(({ values }) => values.content === 'colours')) {
      const middles = rowOf(drawn).map(middle);
      const step = (middles[1] ?? 0) - (middles[0] ?? 0);
      for (const [index, x] of middles.entries()) {
        expect(x, drawn.name).toBeCloseTo((middles[0] ?? 0) + index * step, 6);
      }
    }
  });

  test('no two figures touch', () => {
    for (const drawn of ALL) {
      const row = rowOf(drawn);
      for (const [index, { right }] of row.slice(0, -1).entries()) {
        const next = row[index + 1];
        if (next) expect(next.left - right, drawn.name).toBeGreaterThanOrEqual(2.9);
      }
    }
  });

  test('what is offered is further from the row, and from each other, than neighbours in the row', () => {
    for (const drawn of ALL.filter(({ printed }) => printed.offered)) {
      const page = draw(drawn.printed, drawn.size, COLOUR);
      const [offered] = groupsOf(page, 'offered');
      if (!offered) throw new Error(`${drawn.name}: nothing offered is drawn`);
      const row = rowOf(drawn);
      const below = boundsOf(offered).top - Math.max(...row.map(({ bottom }) => bottom));
      expect(below, drawn.name).toBeGreaterThan(9);
      const places = groupsOf(offered, 'place').map((place) => middle(boundsOf(place)));
      const apart = (places[1] ?? 0) - (places[0] ?? 0);
      expect(apart, drawn.name).toBeGreaterThan(
        middle(row[1] ?? row[0] ?? NONE) - middle(row[0] ?? NONE),
      );
    }
  });
});

const NONE: Bounds = { left: 0, top: 0, right: 0, bottom: 0 };

test.each(PARAMETERS.stickerMm.values)(
  'R8 dots and empty circles are as wide as a sticker of %s mm',
  (stickerMm) => {
    const [, second] = LADDER;
    if (!second) throw new Error('the ladder has no second step');
    for (const isWide of [false, true]) {
      for (const { left, right } of rowOf(
        make({ ...second.values, response: 'sticker', stickerMm }, 4, isWide),
      )) {
        expect(right - left).toBeCloseTo(Number(stickerMm), 2);
      }
    }
  },
);

test('R1 the answer page shows the key in the empty places, in their order', () => {
  for (const { printed, answer, size, name } of ALL) {
    const [shown] = groupsOf(draw(printed, size, COLOUR, answer), 'answer');
    const figures = shown ? groupsOf(shown, 'figure') : [];
    expect(figures.length, name).toBe(answer.figures.length);
    const [row] = groupsOf(draw(printed, size, COLOUR), 'row');
    const empty = (row?.children ?? []).filter((_, place) => printed.row[place] === null);
    for (const [index, figure] of figures.entries()) {
      const [place, inside] = [boundsOf(empty[index] as Group), boundsOf(figure)];
      expect(inside.left, name).toBeGreaterThanOrEqual(place.left - 0.5);
      expect(inside.right, name).toBeLessThanOrEqual(place.right + 0.5);
    }
  }
});
