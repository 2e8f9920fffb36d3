// The drawn page measured: one size for all, the tangle apart, rings round the answer alone, room on paper.
import { describe, expect, test } from 'vitest';
import { boundsOf, groupsOf, outsideOf, placedIn } from '../../../tests/scene-bounds.ts';
import { testSeed } from '../../../tests/seed.ts';
import { sameFigure } from '../../figures/index.ts';
import type { Group } from '../../page/index.ts';
import { draw, room } from './draw.ts';
import { tangle } from './index.ts';
import { limitsOf } from './limits.ts';
import { anyTasks, COLOUR, type Made, taskOf, valuesAt } from './tasks-to-test.ts';

const ALL = anyTasks(40, testSeed('tangle, drawing'));

function pageOf({ printed, answer }: Made, grownMm: number): Group {
  const least = room(printed);
  const size = { widthMm: least.widthMm + grownMm, heightMm: least.heightMm + grownMm };
  return draw(printed, size, COLOUR, answer);
}

describe('the drawn page', () => {
  test.each([0, 30])(
    'has each outline as large in the tangle as below it, %i mm grown',
    (grownMm) => {
      for (const made of ALL) {
        const page = pageOf(made, grownMm);
        const candidates = groupsOf(page, 'candidate').map(boundsOf);
        for (const [index, outline] of groupsOf(page, 'outline').map(boundsOf).entries()) {
          const figure = made.printed.tangle[index]?.figure ?? {};
          const below =
            candidates[made.printed.candidates.findIndex((one) => sameFigure(one, figure))];
          if (!below) throw new Error(`${made.name}: not offered`);
          expect(outline.right - outline.left, made.name).toBeCloseTo(below.right - below.left, 5);
          expect(outline.bottom - outline.top, made.name).toBeCloseTo(below.bottom - below.top, 5);
        }
      }
    },
  );

  test('keeps the tangle further from what is below it than that is from each other', () => {
    for (const made of ALL) {
      const page = pageOf(made, 0);
      const [first] = groupsOf(page, 'tangle').map(boundsOf);
      const highest = Math.min(...groupsOf(page, 'candidate').map((one) => boundsOf(one).top));
      expect(highest - (first?.bottom ?? 0), made.name).toBeGreaterThan(11);
    }
  });

  test('has one ring for each answer, round it and no other, all inside the room', () => {
    for (const made of ALL) {
      const page = pageOf(made, 0);
      const least = room(made.printed);
      expect(outsideOf(page, least.widthMm, least.heightMm), made.name).toEqual([]);
      const rings = groupsOf(page, 'answer').flatMap((answer) => placedIn(answer));
      expect(rings.length, made.name).toBe(made.values.shown);
    }
  });

  test('fits a sheet of A4 or US Letter, upright', () => {
    // 210 by 297 and 215.9 by 279.4 mm less margins of 12 mm and a foot of 18.05 mm.
    for (const { printed, name } of ALL) {
      const { widthMm, heightMm } = room(printed);
      expect(widthMm, name).toBeLessThanOrEqual(210 - 24);
      expect(heightMm, name).toBeLessThanOrEqual(279.4 - 24 - 18.05);
    }
  });
});

describe('R8 refusals', () => {
  test('name how many outlines a content has', () => {
    // Five numerals can stand together, and three directions without left and right.
    expect(limitsOf(valuesAt(8, { content: 'numerals' }), COLOUR)).toMatchObject([
      { code: 'out-of-range', at: 'tangle › absent', got: 3, min: 1, max: 1 },
    ]);
    expect(limitsOf(valuesAt(1, { content: 'numerals', shown: 5 }), COLOUR)).toMatchObject([
      { code: 'out-of-range', at: 'tangle › shown', got: 5, min: 2, max: 4 },
    ]);
    expect(limitsOf(valuesAt(2, { content: 'directions' }), COLOUR)).toMatchObject([{ max: 1 }]);
    expect(limitsOf(valuesAt(11), COLOUR)).toEqual([]);
  });
});

test('what is laid out and what is said', () => {
  const { printed, answer } = taskOf(valuesAt(5, { content: 'shapes-and-colours' }), 3);
  expect(tangle.materials({ printed, answer })).toEqual([{ kind: 'pencil' }]);
  const coloured = { ...printed, response: 'colour-in' };
  expect(tangle.materials({ printed: coloured, answer }).map(({ kind }) => kind)).toEqual(
    printed.candidates.map(() => 'crayon'),
  );
  expect(tangle.words.en.describe(printed)).toMatch(/^Three outlines lie over one another/u);
});
