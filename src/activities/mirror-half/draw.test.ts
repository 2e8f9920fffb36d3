// The drawn page measured: equal frames, the line in the middle between them, stickers at true size.
import { describe, expect, test } from 'vitest';
import { boundsOf, groupsOf, outsideOf, placedIn } from '../../../tests/scene-bounds.ts';
import { testSeed } from '../../../tests/seed.ts';
import type { Bounds } from '../../base/index.ts';
import type { Group } from '../../page/index.ts';
import { draw, room } from './draw.ts';
import { anyTasks, COLOUR, type Made, taskOf, valuesAt } from './tasks-to-test.ts';

const ALL = anyTasks(80, testSeed('mirror-half, drawing'));

function pageOf({ printed, answer }: Made, grownMm: number, withAnswer = false): Group {
  const least = room(printed);
  const size = { widthMm: least.widthMm + grownMm, heightMm: least.heightMm + grownMm };
  return withAnswer ? draw(printed, size, COLOUR, answer) : draw(printed, size, COLOUR);
}

/** The frame of a part: what is drawn first. */
function frameOf(part: Group): Bounds {
  const [first] = placedIn(part);
  if (!first) throw new Error('a part without a frame');
  return first.bounds;
}

test.each([1, 1.5])(
  'R6 halves to choose from stay in the place of the task on paper that lies, %f times as wide',
  (wide) => {
    const rows = [2, 3, 4].flatMap((deep) => [2, 3, 4].map((choices) => ({ deep, choices })));
    for (const { deep, choices } of rows) {
      const values = { response: 'point', deep, choices, elements: 4, along: 3 } as const;
      const made = taskOf(valuesAt(3, values), 1);
      const least = room(made.printed);
      for (const grown of [1, 1.1, 1.2, 1.3]) {
        const size = { widthMm: wide * grown * least.widthMm, heightMm: grown * least.heightMm };
        const page = draw(made.printed, size, COLOUR, made.answer);
        expect(outsideOf(page, size.widthMm, size.heightMm), `${made.name}, ${grown}`).toEqual([]);
      }
    }
  },
);

describe('R1 on the drawn page', () => {
  test.each([0, 30])(
    'all parts are equally large and equally far from the line, %i mm grown',
    (grownMm) => {
      for (const made of ALL) {
        const page = pageOf(made, grownMm);
        const parts = [...groupsOf(page, 'given'), ...groupsOf(page, 'missing')].map(frameOf);
        const [mirror] = groupsOf(page, 'mirror');
        const lines = mirror ? placedIn(mirror) : [];
        expect(lines.length, made.name).toBe(made.values.axis === 'both' ? 2 : 1);
        const [one] = parts;
        if (!one) throw new Error('no parts are drawn');
        for (const { left, right, top, bottom } of parts) {
          expect(right - left, made.name).toBeCloseTo(one.right - one.left, 6);
          expect(bottom - top, made.name).toBeCloseTo(one.bottom - one.top, 6);
        }
        for (const { bounds } of lines) {
          const isUpright = bounds.bottom - bounds.top > bounds.right - bounds.left;
          const [from, to] = isUpright
            ? (['left', 'right'] as const)
            : (['top', 'bottom'] as const);
          const middle = (bounds[from] + bounds[to]) / 2;
          const first = Math.min(...parts.map((part) => part[from]));
          const last = Math.max(...parts.map((part) => part[to]));
          expect(middle - first, made.name).toBeCloseTo(last - middle, 6);
          const gaps = parts.map((part) => Math.max(part[from] - middle, middle - part[to]));
          for (const gap of gaps) expect(gap, made.name).toBeGreaterThan(1.5);
        }
      }
    },
  );

  test('R9 stickers have their true size, and cells that are made are 12 mm wide or more', () => {
    const made = taskOf(valuesAt(4, { stickerMm: '19' }), 3);
    const page = pageOf(made, 20);
    const [given] = groupsOf(page, 'given');
    if (!given) throw new Error('nothing is given');
    const dots = placedIn(given).filter(
      ({ node, roles }) => roles.includes('figure') && node.kind === 'shape' && node.stroke,
    );
    expect(dots.length).toBe(3);
    for (const { bounds } of dots) expect(bounds.right - bounds.left).toBeCloseTo(19, 2);
    for (const { printed, values, name } of ALL) {
      if (printed.offered) continue;
      const across = (values.axis === 'level' ? 1 : 2) * printed.part.columns;
      expect(room(printed).widthMm / across, name).toBeGreaterThan(12);
    }
  });

  test('R6 offered halves are as large as the missing one and further apart than the picture’s frames', () => {
    for (const made of ALL.filter(({ printed }) => printed.offered)) {
      const page = pageOf(made, 0);
      const [missing] = groupsOf(page, 'missing').map(frameOf);
      const offered = groupsOf(page, 'offered').map(frameOf);
      if (!missing) throw new Error('nothing is missing');
      for (const [index, one] of offered.entries()) {
        expect(one.right - one.left, made.name).toBeCloseTo(missing.right - missing.left, 6);
        expect(one.bottom - one.top, made.name).toBeCloseTo(missing.bottom - missing.top, 6);
        expect(one.top - missing.bottom, made.name).toBeGreaterThan(12);
        for (const other of offered.slice(index + 1)) {
          expect(
            Math.max(other.left - one.right, other.top - one.bottom),
            made.name,
          ).toBeGreaterThan(9);
        }
      }
    }
  });

  test('the answer lies in the missing parts, or round the half that fits alone', () => {
    for (const made of ALL) {
      const page = pageOf(made, 10, true);
      const [answer] = groupsOf(page, 'answer');
      if (!answer) throw new Error(`${made.name}: no answer is drawn`);
      const drawn = boundsOf(answer);
      const [given] = groupsOf(page, 'given').map(frameOf);
      const touches = (area: Bounds) =>
        Math.min(
          drawn.right - area.left,
          area.right - drawn.left,
          drawn.bottom - area.top,
          area.bottom - drawn.top,
        ) > 0;
      if ('choice' in made.answer) {
        const touched = groupsOf(page, 'offered').flatMap((half, place) =>
          touches(frameOf(half)) ? [place] : [],
        );
        expect(touched, made.name).toEqual([made.answer.choice]);
      } else if (made.values.axis !== 'both' && given) {
        expect(touches(given), made.name).toBe(false);
      }
      expect(groupsOf(pageOf(made, 10), 'answer')).toEqual([]);
    }
  });
});
