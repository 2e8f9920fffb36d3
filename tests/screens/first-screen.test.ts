// What a browser must fetch before anything can be seen; a size is the same on every machine.
import { beforeAll, expect, test } from 'vitest';
import { filesOfFirstScreen, sizeOf } from '../../bench/sizes.ts';
import { buildWeb } from '../../scripts/build-web.mjs';

const MOST_KIB = 150;

beforeAll(() => {
  if (!buildWeb()) throw new Error('the app could not be built');
});

test(`the scripts of the first screen take ${MOST_KIB} KiB at most, packed`, () => {
  const scripts = filesOfFirstScreen('js');
  expect(scripts.length).toBeGreaterThan(0);
  expect(sizeOf(scripts).packed / 1024).toBeLessThanOrEqual(MOST_KIB);
});
