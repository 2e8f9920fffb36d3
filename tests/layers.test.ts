// The picture of the layers is the one that today's imports give.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { importsInSource, layersPicture, PICTURE } from '../scripts/layers.ts';

test('docs show the layers as the imports are: if not, `node scripts/run.mjs scripts/layers.ts`', async () => {
  expect(readFileSync(PICTURE, 'utf8')).toBe(layersPicture(await importsInSource()));
});

test('a folder that imports from one which imports it has no picture', () => {
  const circle = new Map([
    ['one', new Map([['other', 1]])],
    ['other', new Map([['one', 2]])],
  ]);
  expect(() => layersPicture(circle)).toThrow('a circle: one > other > one');
});
