// The fonts of scripts beyond the page's own letters: read only where a child's name or the language of the pages needs one.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { SCRIPTS, scriptsIn, scriptsOfLanguage } from '../page/index.ts';
import { readAsset } from './package-files.ts';

const { resolve } = createRequire(import.meta.url);

/** Makes ready whatever pages in the language with these words need; nothing is loaded for the page's own letters. */
export async function loadScriptsFor(language: string, words = ''): Promise<void> {
  const wanted = new Set([...scriptsOfLanguage(language), ...scriptsIn(words)]);
  const scripts = SCRIPTS.filter((script) => wanted.has(script));
  if (scripts.length === 0) return;
  const { loadScripts } = await import('../shaping/index.ts');
  await loadScripts(scripts, async (file) =>
    file.startsWith('assets/') ? readAsset(file) : readFileSync(resolve(file)),
  );
}
