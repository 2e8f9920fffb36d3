// Languages as people write them become tags, and come back as they were written.
import { expect, test } from 'vitest';
import { readLanguages, writeLanguages } from './languages.ts';

test('names and tags are read, each once and in their order', () => {
  expect(readLanguages('Polish, english; pt-br,, pl')).toEqual({
    ok: true,
    value: ['pl', 'en', 'pt-BR'],
  });
  expect(readLanguages('  ')).toEqual({ ok: true, value: [] });
});

test('what is no language is refused by its own words', () => {
  expect(readLanguages('Polish, Gardenish')).toMatchObject({
    ok: false,
    refusals: [{ got: 'Gardenish' }],
  });
  expect(readLanguages('12 34').ok).toBe(false);
});

test.each([[['pl', 'en']], [['pt-BR', 'de']], [['tr']]])('%j come back the same', (tags) => {
  expect(readLanguages(writeLanguages(tags))).toEqual({ ok: true, value: tags });
});
