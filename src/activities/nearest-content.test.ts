// A content that an activity cannot carry is refused with the nearest one that it can.
import { expect, test } from 'vitest';
import { type ActivityId, activityOf } from './registry.ts';

const STYLE = { print: 'colour' } as const;

test.each([
  ['shadows', 'shapes-and-colours', 'pictures'],
  ['size-order', 'shapes', 'pictures'],
  ['size-order', 'colours', 'colours-and-sizes'],
  ['copy-pattern', 'pictures', 'shapes'],
  ['copy-pattern', 'shapes-colours-and-sizes', 'shapes-and-colours'],
] as const)('%s cannot carry %s and names %s', (id: ActivityId, content, nearest) => {
  const read = activityOf(id).read(1, { content }, STYLE);
  const [refusal] = read.ok ? [] : read.refusals;
  expect(refusal).toMatchObject({ code: 'not-a-choice', at: `${id} › content`, nearest });
});

test('what is no content at all is refused without one', () => {
  const read = activityOf('shadows').read(1, { content: 'smells' }, STYLE);
  const [refusal] = read.ok ? [] : read.refusals;
  expect(refusal).not.toHaveProperty('nearest');
});
