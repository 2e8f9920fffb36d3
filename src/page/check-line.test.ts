// The check line: its geometry before any press.
import { expect, test } from 'vitest';
import { pathBounds } from '../base/index.ts';
import { CHECK_LINE_SIZE, checkLine } from './index.ts';

test('from tick to tick it is 50 mm, and the line neither falls short of the ticks nor passes them', () => {
  const shapes = checkLine(20, 30, 'This line is 50 mm long.').children.flatMap((node) =>
    node.kind === 'shape' ? [node] : [],
  );
  const [line, first, last] = shapes.map(({ path }) => pathBounds(path));
  if (!line || !first || !last) throw new Error('a check line has a line and two ticks');
  expect(last.left - first.left).toBe(50);
  expect([line.left, line.right]).toEqual([first.left, last.left]);
  expect(line.top).toBe((first.top + first.bottom) / 2);
  for (const { stroke } of shapes) expect(stroke?.ends).toBe('square');
  expect(last.right + (shapes[0]?.stroke?.widthMm ?? 0) / 2).toBeCloseTo(
    20 + CHECK_LINE_SIZE.widthMm,
    9,
  );
});
