// Which language is begun with, and which way it is written.
import { expect, test } from 'vitest';
import { nearestLanguage } from './first-language.ts';
import { directionOf } from './use-language.ts';

test.each([
  [['de-AT', 'en'], 'de'],
  [['fr', 'pt-PT', 'de'], 'pt-BR'],
  [['xx', 'en-GB', 'de'], 'en'],
  [['xx'], 'en'],
  [[], 'en'],
] as const)('%j is served by %s', (wanted, language) => {
  expect(nearestLanguage(wanted, ['en', 'de', 'pt-BR'])).toBe(language);
});

test('Arabic, Hebrew, Persian and Urdu are written from right to left, others are not', () => {
  expect(['ar', 'he', 'fa', 'ur'].map(directionOf)).toEqual(['rtl', 'rtl', 'rtl', 'rtl']);
  expect(['en', 'de', 'zh', 'hi'].map(directionOf)).toEqual(['ltr', 'ltr', 'ltr', 'ltr']);
});
