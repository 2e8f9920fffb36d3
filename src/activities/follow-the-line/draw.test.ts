// The drawn page measured: lines between their figures, true sticker circles, the answer's numbers and dots.
import { describe, expect, test } from 'vitest';
import { outsideOf, placedIn } from '../../../tests/scene-bounds.ts';
import { testSeed } from '../../../tests/seed.ts';
import type { Bounds } from '../../base/index.ts';
import type { Group } from '../../page/index.ts';
import { draw, room } from './draw.ts';
import { anyTasks, COLOUR, GREY, type Made, taskOf, valuesAt } from './tasks-to-test.ts';

const ALL = anyTasks(60, testSeed('follow-the-line, drawing'));

function pageOf({ printed, answer }: Made, grownMm = 0, withAnswer = false): Group {
  const least = room(printed);
  const size = { widthMm: least.widthMm + grownMm, heightMm: least.heightMm + grownMm };
  return withAnswer ? draw(printed, size, COLOUR, answer) : draw(printed, size, COLOUR);
}

function boundsOf(page: Group, role: string): readonly Bounds[] {
  return page.children.flatMap((node) => {
    if (node.kind !== 'group' || node.role !== role) return [];
    const parts = placedIn(node).map(({ bounds }) => bounds);
    return [
      {
        left: Math.min(...parts.map(({ left }) => left)),
        top: Math.min(...parts.map(({ top }) => top)),
        right: Math.max(...parts.map(({ right }) => right)),
        bottom: Math.max(...parts.map(({ bottom }) => bottom)),
      },
    ];
  });
}

describe('the drawn page', () => {
  test.each([0, 30])('has all lines between starts and ends, %i mm grown', (grownMm) => {
    for (const made of ALL) {
      const page = pageOf(made, grownMm);
      const isDown = made.values.direction === 'down';
      const [from, to] = isDown ? (['top', 'bottom'] as const) : (['left', 'right'] as const);
      const first = Math.max(...boundsOf(page, 'start').map((bounds) => bounds[to]));
      const last = Math.min(...boundsOf(page, 'end').map((bounds) => bounds[from]));
      for (const line of boundsOf(page, 'line')) {
        expect(line[from], made.name).toBeGreaterThan(first + 0.2);
        expect(line[to], made.name).toBeLessThan(last - 0.2);
      }
    }
  });

  test('keeps everything, answers too, inside its room', () => {
    for (const made of ALL) {
      const { widthMm, heightMm } = room(made.printed);
      expect(outsideOf(pageOf(made, 0, true), widthMm, heightMm), made.name).toEqual([]);
    }
  });

  test('R8 has end circles as wide as the sticker, at any size of the task', () => {
    const made = taskOf(valuesAt(7, { response: 'sticker', stickerMm: '13' }), 3);
    for (const grownMm of [0, 40]) {
      for (const { left, right } of boundsOf(pageOf(made, grownMm), 'end')) {
        // Its line included, so that the sticker covers it.
        expect(right - left).toBeCloseTo(13, 5);
      }
    }
  });

  test('has no colours of lines in grey print', () => {
    const made = taskOf(valuesAt(4), 5, GREY);
    const page = draw(made.printed, room(made.printed), GREY);
    const lines = page.children.filter((node) => node.kind === 'group' && node.role === 'line');
    const inks = lines.flatMap((line) =>
      placedIn(line).map(({ node }) => (node.kind === 'shape' ? node.stroke?.colour : undefined)),
    );
    expect(new Set(inks).size).toBe(1);
  });

  test('shows the answer on the answer drawing alone: two numbers a line, or each end filled in', () => {
    for (const made of ALL) {
      expect(boundsOf(pageOf(made), 'answer')).toEqual([]);
      const answer = pageOf(made, 0, true).children.find(
        (node) => node.kind === 'group' && node.role === 'answer',
      );
      const parts = answer?.kind === 'group' ? answer.children.length : 0;
      expect(parts, made.name).toBe((made.printed.ends ? 2 : 1) * made.values.lines);
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
