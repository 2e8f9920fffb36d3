// Half-made sheets: an empty circle of the sticker's size for each dot, all else as printed.
import { describe, expect, test } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import { ACTIVITY_IDS } from '../activities/index.ts';
import type { SceneNode } from '../page/index.ts';
import { contrastOf } from '../palette/index.ts';
import { sheetPage } from '../sheets/index.ts';
import { boundsOf } from './bounds.ts';
import { sheetOf } from './guides-to-test.ts';
import { halfMade } from './half-made.ts';
import { madeFaults } from './pack-pages.ts';

const seed = testSeed('half-made');

/** Groups that stand for a sticker: one word and one circle. */
function circlesIn(node: SceneNode): SceneNode[] {
  if (node.kind !== 'group') return [];
  if (node.alt?.startsWith('empty circle for a ')) return [node];
  return node.children.flatMap(circlesIn);
}

function dotsIn(node: SceneNode): string[] {
  if (node.kind !== 'group') return [];
  const { shows } = node;
  if (!shows) return node.children.flatMap(dotsIn);
  const isDot = (shows.form ?? 'circle') === 'circle' && shows.size === undefined;
  return isDot && shows.colour && (shows.fill ?? 'solid') === 'solid' ? [shows.colour] : [];
}

describe.each(ACTIVITY_IDS)('%s', (id) => {
  test.each(['colour', 'grey'] as const)(
    'in %s each dot becomes a circle that says its colour',
    (print) => {
      const sheet = sheetOf(id, 1, seed, { print });
      const printed = sheetPage(sheet);
      const { page, stickers } = halfMade(sheet);
      const dots = printed.nodes.flatMap(dotsIn);
      expect(stickers.map(({ colour }) => colour)).toEqual(dots);
      const circles = page.nodes.flatMap(circlesIn);
      expect(circles).toHaveLength(dots.length);
      for (const [index, circle] of circles.entries()) {
        if (circle.kind !== 'group') continue;
        const [ring, word] = circle.children;
        if (ring?.kind !== 'shape' || word?.kind !== 'text')
          throw new Error('no circle with a word');
        const ringed = boundsOf(ring);
        const worded = boundsOf(word);
        expect(worded.left).toBeGreaterThan(ringed.left);
        expect(worded.right).toBeLessThan(ringed.right);
        expect(contrastOf(word.colour, '#ffffff')).toBeGreaterThanOrEqual(4.5);
        expect([stickers[index]?.colour]).toContain(circle.alt?.split(' ')[4]);
      }
      if (dots.length === 0) expect(page).toEqual(printed);
    },
  );
});

test('a circle is as wide as its sticker, its line included', () => {
  const sheet = sheetOf('in-every-box', 1, seed, { tasks: 1 });
  const { page, stickers } = halfMade(sheet);
  const widths = page.nodes.flatMap(circlesIn).map((circle) => {
    const { left, right } = boundsOf(circle);
    return right - left;
  });
  expect(stickers.map(({ diameterMm }) => diameterMm)).toEqual([16, 16, 16, 16, 16, 16]);
  for (const width of widths) expect(width).toBeCloseTo(16, 2);
});

test.each([
  [19, { code: 'does-not-fit', got: 19, max: 16 }],
  [0, { code: 'out-of-range', got: 0, min: 6, max: 40 }],
  [Number.NaN, { code: 'out-of-range' }],
  [8.5, { code: 'wrong-type', got: 8.5 }],
])(
  'stickers of %d mm are refused where their circles have no room for them',
  (stickerMm, refusal) => {
    const sheets = [sheetOf('in-every-box', 1, seed, { tasks: 1 })];
    expect(madeFaults({ sheets }, { made: 'half-made', stickerMm })).toMatchObject([refusal]);
  },
);
