// The fonts of scripts beyond the page's own letters, and what shapes them: fetched only where words need one.
import arabicRegular from '@fontsource/noto-naskh-arabic/files/noto-naskh-arabic-arabic-400-normal.woff?url';
import arabicBold from '@fontsource/noto-naskh-arabic/files/noto-naskh-arabic-arabic-700-normal.woff?url';
import greekRegular from '@fontsource/noto-sans/files/noto-sans-greek-400-normal.woff?url';
import greekBold from '@fontsource/noto-sans/files/noto-sans-greek-700-normal.woff?url';
import devanagariRegular from '@fontsource/noto-sans-devanagari/files/noto-sans-devanagari-devanagari-400-normal.woff?url';
import devanagariBold from '@fontsource/noto-sans-devanagari/files/noto-sans-devanagari-devanagari-700-normal.woff?url';
import hebrewRegular from '@fontsource/noto-sans-hebrew/files/noto-sans-hebrew-hebrew-400-normal.woff?url';
import hebrewBold from '@fontsource/noto-sans-hebrew/files/noto-sans-hebrew-hebrew-700-normal.woff?url';
import andikaBold from '../../../assets/fonts/Andika-Bold.ttf?url';
import andikaRegular from '../../../assets/fonts/Andika-Regular.ttf?url';
import { type Script, scriptsIn, scriptsOfLanguage } from '../../page/index.ts';
import type { FontFile } from '../../shaping/index.ts';
import { loadFile } from './load-file.ts';

const ADDRESSES: Readonly<Record<FontFile, string>> = {
  'assets/fonts/Andika-Regular.ttf': andikaRegular,
  'assets/fonts/Andika-Bold.ttf': andikaBold,
  '@fontsource/noto-sans/files/noto-sans-greek-400-normal.woff': greekRegular,
  '@fontsource/noto-sans/files/noto-sans-greek-700-normal.woff': greekBold,
  '@fontsource/noto-sans-hebrew/files/noto-sans-hebrew-hebrew-400-normal.woff': hebrewRegular,
  '@fontsource/noto-sans-hebrew/files/noto-sans-hebrew-hebrew-700-normal.woff': hebrewBold,
  '@fontsource/noto-naskh-arabic/files/noto-naskh-arabic-arabic-400-normal.woff': arabicRegular,
  '@fontsource/noto-naskh-arabic/files/noto-naskh-arabic-arabic-700-normal.woff': arabicBold,
  '@fontsource/noto-sans-devanagari/files/noto-sans-devanagari-devanagari-400-normal.woff':
    devanagariRegular,
  '@fontsource/noto-sans-devanagari/files/noto-sans-devanagari-devanagari-700-normal.woff':
    devanagariBold,
};

/** Makes ready whatever these words need; nothing is fetched for words of the page's own letters. */
export function loadScriptsOf(words: string): Promise<void> {
  return load(scriptsIn(words));
}

/** Makes ready whatever pages in the language need; nothing is fetched for one in the page's own letters. */
export function loadScriptsOfLanguage(language: string): Promise<void> {
  return load(scriptsOfLanguage(language));
}

async function load(scripts: readonly Script[]): Promise<void> {
  if (scripts.length === 0) return;
  const { loadScripts } = await import('../../shaping/index.ts');
  await loadScripts(scripts, (file) => loadFile(ADDRESSES[file]));
}
