// The drawn page measured: sticker sizes, distances, the answer's rings.
import { describe, expect, test } from 'vitest';
import { type Placed, placedIn } from '../../../tests/scene-bounds.ts';
import { testSeed } from '../../../tests/seed.ts';
import { type Bounds, randomFrom } from '../../base/index.ts';
import type { Group } from '../../page/index.ts';
import type { Size } from '../activity.ts';
import { draw, room } from './draw.ts';
import { generate } from './generate.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { type Answer, type BoxValues, PARAMETERS, type Printed } from './task.ts';

const COLOUR = { print: 'colour' } as const;

interface Drawn {
  readonly name: string;
  readonly values: BoxValues;
  readonly printed: Printed;
  readonly answer: Answer;
  readonly size: Size;
}

function makeDrawn(values: BoxValues, seed: number, grownMm: number): Drawn {
  const { printed, answer } = generate(values, randomFrom(seed), COLOUR);
  const least = room(printed);
  const size = { widthMm: least.widthMm + grownMm, heightMm: least.heightMm + 2 * grownMm };
  return { name: JSON.stringify({ ...values, seed, grownMm }), values, printed, answer, size };
}

/** A task of every step and content, in all layouts, some at their least size and some larger. */
function makeAll(): readonly Drawn[] {
  const seed = testSeed('in-every-box, drawing');
  const drawn: Drawn[] = [];
  for (const [index, { values }] of LADDER.entries()) {
    for (const content of PARAMETERS.content.values) {
      const layout = PARAMETERS.layout.values[(index + content.length) % 3] ?? 'row';
      const changed = { ...values, content, layout };
      if (limitsOf(changed, COLOUR).length > 0) continue;
      drawn.push(makeDrawn(changed, seed + index, index % 2 === 0 ? 0 : 30));
    }
  }
  return drawn;
}

/** Less a hundredth for sums of fractions. */
const LEAST_MM = 3 - 0.01;

const ALL = makeAll();

function pageOf({ printed, answer, size }: Drawn, withAnswer = false): Group {
  return withAnswer ? draw(printed, size, COLOUR, answer) : draw(printed, size, COLOUR);
}

/** Bounds of each group of a role, in the order in which they are drawn. */
function groupsOf(page: Group, role: string): readonly Group[] {
  return page.children.flatMap((node) => {
    if (node.kind !== 'group') return [];
    return node.role === role ? [node] : groupsOf(node, role);
  });
}

function boundsOf(parts: readonly Placed[]): Bounds {
  return {
    left: Math.min(...parts.map(({ bounds }) => bounds.left)),
    top: Math.min(...parts.map(({ bounds }) => bounds.top)),
    right: Math.max(...parts.map(({ bounds }) => bounds.right)),
    bottom: Math.max(...parts.map(({ bounds }) => bounds.bottom)),
  };
}

/** The blank between two upright rectangles: the larger of that beside and that below; below 0: they overlap. */
function blankBetween(one: Bounds, other: Bounds): number {
  return Math.max(
    one.left - other.right,
    other.left - one.right,
    one.top - other.bottom,
    other.top - one.bottom,
  );
}

function leastBlank(bounds: readonly Bounds[]): number {
  const blanks = bounds.flatMap((one, index) =>
    bounds.slice(index + 1).map((other) => blankBetween(one, other)),
  );
  return Math.min(...blanks);
}

function width({ left, right }: Bounds): number {
  return right - left;
}

function framesOf(page: Group): readonly Bounds[] {
  return groupsOf(page, 'box').map((shown) => boundsOf(placedIn(shown)));
}

/** The figures of each box, a quantity with its card. */
function figuresOf(page: Group): readonly (readonly Bounds[])[] {
  return groupsOf(page, 'box').map((shown) => {
    return groupsOf(shown, 'choice').map((choice) => boundsOf(placedIn(choice)));
  });
}

describe('R10 on the drawn page', () => {
  test('no two figures of a box, nor a figure and the line of its box, are nearer than 3 mm', () => {
    for (const drawn of ALL) {
      const page = pageOf(drawn);
      const frames = framesOf(page);
      for (const [index, figures] of figuresOf(page).entries()) {
        expect(figures.length, drawn.name).toBe(drawn.values.figures);
        expect(leastBlank(figures), drawn.name).toBeGreaterThanOrEqual(LEAST_MM);
        const frame = frames[index] ?? { left: 0, top: 0, right: 0, bottom: 0 };
        for (const { left, top, right, bottom } of figures) {
          const blank = [
            left - frame.left,
            top - frame.top,
            frame.right - right,
            frame.bottom - bottom,
          ];
          expect(Math.min(...blank), drawn.name).toBeGreaterThanOrEqual(LEAST_MM);
        }
      }
    }
  });

  test('in rows and grids, figures of different boxes are further apart than neighbours in one box', () => {
    for (const drawn of ALL.filter(({ values }) => values.layout !== 'loose')) {
      const boxes = figuresOf(pageOf(drawn));
      const across = boxes.flatMap((figures, index) => {
        const others = boxes.slice(index + 1).flat();
        return figures.flatMap((one) => others.map((other) => blankBetween(one, other)));
      });
      expect(Math.min(...across), drawn.name).toBeGreaterThan(
        1.2 * Math.min(...boxes.map(leastBlank)),
      );
    }
  });

  test('all boxes are equally large and side by side or one below the other', () => {
    for (const drawn of ALL) {
      const frames = framesOf(pageOf(drawn));
      const [first] = frames;
      if (!first) throw new Error(`${drawn.name}: no box`);
      for (const frame of frames) {
        expect(width(frame), drawn.name).toBeCloseTo(width(first), 6);
        expect(frame.bottom - frame.top, drawn.name).toBeCloseTo(first.bottom - first.top, 6);
      }
      expect(leastBlank(frames), drawn.name).toBeGreaterThanOrEqual(9.9);
    }
  });

  test('the task stands in the middle of its place', () => {
    for (const drawn of ALL) {
      const { left, top, right, bottom } = boundsOf(placedIn(pageOf(drawn)));
      expect(left, drawn.name).toBeCloseTo(drawn.size.widthMm - right, 6);
      expect(top, drawn.name).toBeCloseTo(drawn.size.heightMm - bottom, 6);
    }
  });
});

describe('R9 a dot that takes a sticker', () => {
  test.each(PARAMETERS.stickerMm.values)(
    'is as wide as a sticker of %s mm, and so is its empty circle',
    (stickerMm) => {
      const [, second] = LADDER;
      if (!second) throw new Error('the ladder has no second step');
      const values: BoxValues = { ...second.values, response: 'sticker', stickerMm };
      for (const grownMm of [0, 40]) {
        const page = pageOf(makeDrawn(values, 5, grownMm));
        const dots = figuresOf(page).flat();
        const circles = groupsOf(page, 'circle').map((circle) => boundsOf(placedIn(circle)));
        expect([dots.length, circles.length]).toEqual([9, 1]);
        for (const shown of [...dots, ...circles])
          expect(width(shown)).toBeCloseTo(Number(stickerMm), 2);
        // A finger needs 12 mm of its own, however small the sticker is.
        const apart = leastBlank(dots) + Number(stickerMm);
        expect(apart).toBeGreaterThanOrEqual(12);
      }
    },
  );

  test('has its circle filled with the answer on the answer page alone', () => {
    const [, , , fourth] = LADDER;
    if (!fourth) throw new Error('the ladder has no fourth step');
    const drawn = makeDrawn({ ...fourth.values, response: 'sticker' }, 3, 10);
    const [answer] = groupsOf(pageOf(drawn, true), 'answer');
    const filled = answer ? groupsOf(answer, 'figure').map(({ alt }) => alt) : [];
    expect(filled).toEqual(drawn.answer.figures.map(({ colour }) => `${colour} circle`));
    expect(groupsOf(pageOf(drawn), 'answer')).toEqual([]);
  });
});

test('R1 the answer page rings each shared figure in every box, and no ring touches a neighbour or a box', () => {
  for (const drawn of ALL) {
    const page = pageOf(drawn, true);
    const [answer] = groupsOf(page, 'answer');
    const rings = answer ? placedIn(answer).map(({ bounds }) => bounds) : [];
    expect(rings.length, drawn.name).toBe(drawn.values.boxes * drawn.values.shared);
    expect(leastBlank(rings), drawn.name).toBeGreaterThan(0.3);
    const frames = framesOf(page);
    for (const ring of rings) {
      const around = frames.filter(
        ({ left, top, right, bottom }) =>
          ring.left - left > 0.7 &&
          ring.top - top > 0.7 &&
          right - ring.right > 0.7 &&
          bottom - ring.bottom > 0.7,
      );
      expect(around.length, drawn.name).toBe(1);
    }
  }
});

test('every step of every content fits a sheet of A4, but for boxes of many sizes', () => {
  // 297 and 210 mm (ISO 216) less margins of 12 mm and a foot of 18.05 mm.
  const calm = ALL.filter(({ values }) => values.layout !== 'row' && values.content !== 'sizes');
  for (const drawn of calm) {
    const { widthMm, heightMm } = room(drawn.printed);
    expect(widthMm, drawn.name).toBeLessThanOrEqual(210 - 24);
    expect(heightMm, drawn.name).toBeLessThanOrEqual(297 - 24 - 18.05);
  }
});
