// What a browser must fetch before anything can be seen; a size is the same on every machine.
import { beforeAll, expect, test } from 'vitest';
import { filesOfFirstScreen, filesOfToday, sizeOf } from '../../bench/sizes.ts';
import { buildWeb } from '../../scripts/build-web.mjs';

const MOST_KIB = 150;
const MOST_OF_TODAY_KIB = 100;

beforeAll(() => {
  if (!buildWeb()) throw new Error('the app could not be built');
});

test(`the scripts of the first screen take ${MOST_KIB} KiB at most, packed`, () => {
  const scripts = filesOfFirstScreen('js');
  expect(scripts.length).toBeGreaterThan(0);
  expect(sizeOf(scripts).packed / 1024).toBeLessThanOrEqual(MOST_KIB);
});

test(`Today adds ${MOST_OF_TODAY_KIB} KiB at most, packed: it carries no activity`, () => {
  const first = new Set(filesOfFirstScreen('js'));
  const added = filesOfToday().filter((name) => !first.has(name));
  expect(added.some((name) => name.includes('use-records'))).toBe(true);
  expect(sizeOf(added).packed / 1024).toBeLessThanOrEqual(MOST_OF_TODAY_KIB);
});
