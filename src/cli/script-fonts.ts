// The fonts of scripts beyond the page's own letters: read only where a child's name needs one.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { type Script, scriptsIn } from '../page/index.ts';
import { readAsset } from './package-files.ts';

const { resolve } = createRequire(import.meta.url);

/** Makes ready whatever these words need; nothing is loaded for words of the page's own letters. */
export async function loadScriptsOf(words: string): Promise<void> {
  const scripts: readonly Script[] = scriptsIn(words);
  if (scripts.length === 0) return;
  const { loadScripts } = await import('../shaping/index.ts');
  await loadScripts(scripts, async (file) =>
    file.startsWith('assets/') ? readAsset(file) : readFileSync(resolve(file)),
  );
}
