// Which language is begun with.
import { expect, test } from 'vitest';
import { nearestLanguage } from './first-language.ts';

test.each([
  [['de-AT', 'en'], 'de'],
  [['fr', 'pt-PT', 'de'], 'pt-BR'],
  [['xx', 'en-GB', 'de'], 'en'],
  [['xx'], 'en'],
  [[], 'en'],
] as const)('%j is served by %s', (wanted, language) => {
  expect(nearestLanguage(wanted, ['en', 'de', 'pt-BR'])).toBe(language);
});
