// After each file of tests that share a process: no language and no font is there that was not there before.
import { afterAll, expect } from 'vitest';
import { loadedLanguages } from '../src/languages/index.ts';
import { hasFace, SCRIPTS } from '../src/page/index.ts';

afterAll(() => {
  expect(loadedLanguages(), 'languages that are loaded').toEqual(['en']);
  expect(SCRIPTS.filter(hasFace), 'scripts whose fonts are loaded').toEqual([]);
});
