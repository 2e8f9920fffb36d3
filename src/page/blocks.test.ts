// Blocks of the adult's page: measured truly, nothing beside its column, nothing lost between pages.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placedIn } from '../../tests/scene-bounds.ts';
import { testSeed } from '../../tests/seed.ts';
import { circlePath } from '../base/index.ts';
import {
  type Block,
  bullets,
  filled,
  group,
  heading,
  INK,
  leadRows,
  paragraph,
  picture,
  type SceneNode,
  stackBlocks,
} from './index.ts';

const seed = testSeed('blocks');
const WIDTH = 120;
const dot = {
  drawing: group('figure', [filled(circlePath(5, 5, 5), INK)], 'dot'),
  widthMm: 10,
  heightMm: 10,
};

const words = fc
  .array(fc.string({ minLength: 1, maxLength: 12 }), { maxLength: 40 })
  .map((list) => list.join(' '));
const blocks: fc.Arbitrary<Block> = fc.oneof(
  words.map((line) => paragraph(line, WIDTH)),
  words.map((line) => heading(line, WIDTH, 2)),
  fc.array(words, { minLength: 1, maxLength: 4 }).map((lines) => bullets(lines, WIDTH)),
  words.map((line) =>
    leadRows(
      [
        { lead: 'Sheet 1', words: line },
        { lead: dot, words: line },
      ],
      WIDTH,
    ),
  ),
  fc.constant(picture(dot.drawing, dot)),
);

function textsOf(node: SceneNode): string[] {
  return placedIn(node).flatMap((placed) =>
    placed.node.kind === 'text' ? [placed.node.text] : [],
  );
}

test('a block stays inside its column and between its top and its height', () => {
  fc.assert(
    fc.property(blocks, (block) => {
      for (const { bounds } of placedIn(block.draw(20, 30))) {
        expect(bounds.left).toBeGreaterThanOrEqual(20 - 0.01);
        expect(bounds.right).toBeLessThanOrEqual(20 + WIDTH + 0.01);
        expect(bounds.top).toBeGreaterThanOrEqual(30 - 0.01);
        expect(bounds.bottom).toBeLessThanOrEqual(30 + block.heightMm + 0.01);
      }
    }),
    { seed, numRuns: 40 },
  );
});

test('a paragraph says every word, in order', () => {
  const line = 'Lay out what is below, sit beside the child, and stop while it is still fun. '
    .repeat(5)
    .trim();
  const said = textsOf(paragraph(line, 60).draw(0, 0));
  expect(said.length).toBeGreaterThan(5);
  expect(said.join(' ')).toBe(line);
});

describe('stackBlocks', () => {
  const area = { left: 10, top: 10, width: WIDTH, height: 60 };

  test('page after page, every block is placed once and in order, and none passes the foot of its page', () => {
    fc.assert(
      fc.property(
        fc.array(fc.string({ minLength: 1, maxLength: 300 }), { maxLength: 12 }),
        (lines) => {
          let rest: readonly Block[] = lines.map((line) => paragraph(line, WIDTH));
          const said: string[] = [];
          while (rest.length > 0) {
            const stack = stackBlocks(rest, area);
            expect(stack.rest.length).toBeLessThan(rest.length);
            for (const { bounds } of placedIn(stack.group)) {
              expect(bounds.bottom).toBeLessThanOrEqual(area.top + area.height + 0.01);
            }
            said.push(...textsOf(stack.group));
            rest = stack.rest;
          }
          expect(said).toEqual(lines.flatMap((line) => textsOf(paragraph(line, WIDTH).draw(0, 0))));
        },
      ),
      { seed, numRuns: 50 },
    );
  });

  test('blocks keep their distance, and the first stands at the very top', () => {
    const stack = stackBlocks([paragraph('one', WIDTH), heading('two', WIDTH, 2)], area);
    const [one, two] = placedIn(stack.group);
    expect(one?.bounds.top).toBeLessThan(area.top + 1);
    expect((two?.bounds.top ?? 0) - (one?.bounds.bottom ?? 0)).toBeGreaterThan(4);
  });

  test('a block taller than the page is placed all the same, so that the stacking ends', () => {
    const tall = picture(dot.drawing, { widthMm: 10, heightMm: 500 });
    expect(stackBlocks([tall], area).rest).toEqual([]);
  });
});

test('leads stand in one column and their words in another', () => {
  const placed = placedIn(
    leadRows(
      [
        { lead: 'Sheet 1', words: 'in every box' },
        { lead: 'Sheet 10', words: 'by key' },
      ],
      WIDTH,
    ).draw(0, 0),
  );
  expect(placed.map(({ bounds }) => bounds.left > 0)).toEqual([false, true, false, true]);
  expect(placed[1]?.bounds.left).toBe(placed[3]?.bounds.left);
});
