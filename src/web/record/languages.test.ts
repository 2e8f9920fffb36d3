// Languages as people write them become tags, and come back as they were written.
import { afterEach, expect, test } from 'vitest';
import { LANGUAGES } from '../../languages/index.ts';
import { speakIn } from '../speaking/language-now.ts';
import { readLanguages, writeLanguages } from './languages.ts';
import { words } from './words.ts';

afterEach(() => speakIn('en'));

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

test.each(LANGUAGES)('in %s they come back the same', async (language) => {
  await speakIn(language);
  for (const tags of [['pl', 'en'], ['pt-BR', 'de'], ['tr']]) {
    expect(readLanguages(writeLanguages(tags))).toEqual({ ok: true, value: tags });
  }
});

test('the example of each language is understood in it', async () => {
  for (const [language, example] of [
    ['es', 'polaco, inglés'],
    ['hi', 'हिन्दी, अंग्रेज़ी'],
    ['ar', 'العربية، الإنجليزية'],
  ] as const) {
    await speakIn(language);
    expect(words.languagesHelp).toContain(example);
    expect(readLanguages(example).ok, example).toBe(true);
  }
});
