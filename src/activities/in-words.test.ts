// Words that all activities share can be said in every language.
import { beforeAll, expect, test } from 'vitest';
import { LANGUAGES, loadAllCatalogues } from '../languages/index.ts';
import { WORDINGS } from './in-words.ts';

beforeAll(loadAllCatalogues);

test.each(LANGUAGES)('a size alone has a name of its own by its rank, in %s', (language) => {
  for (const sizes of [
    [1, 2],
    [1, 2, 3],
    [1, 2, 3, 4],
  ]) {
    const names = sizes.map((size) => WORDINGS[language].size(sizes, size));
    expect(new Set(names).size).toBe(sizes.length);
    expect(names.join()).not.toMatch(/[{}]/);
  }
});
