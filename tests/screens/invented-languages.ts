// The app built with two invented languages: every English message of its own in brackets, written from left to right
// and from right to left. Their tags are those that CLDR keeps for such trials.
import { readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, type Plugin } from 'vite';
import { parsedCatalogue } from '../../scripts/lean.ts';
import type { Catalogue } from '../../src/languages/index.ts';

export const LEFT_TO_RIGHT = 'en-XA';
export const RIGHT_TO_LEFT = 'ar-XB';
const INVENTED = [LEFT_TO_RIGHT, RIGHT_TO_LEFT];

const ROOT = fileURLToPath(new URL('../..', import.meta.url));
const WEB = join(ROOT, 'src', 'web');

const SPOKEN = /spoken\(\s*'([^']+)',\s*MESSAGES/;
const MESSAGES_FROM = /import \{ MESSAGES \} from '([^']+)'/;

/** All that the app itself says, in brackets. */
export async function bracketed(): Promise<Catalogue> {
  const catalogue: Record<string, Record<string, string>> = {};
  for (const file of readdirSync(WEB, { recursive: true, encoding: 'utf8' })) {
    if (!file.endsWith('.ts')) continue;
    const text = readFileSync(join(WEB, file), 'utf8');
    const [space, from] = [SPOKEN.exec(text)?.[1], MESSAGES_FROM.exec(text)?.[1]];
    if (space === undefined || from === undefined) continue;
    const { MESSAGES } = await import(join(WEB, dirname(file), from));
    const entries = Object.entries(MESSAGES).map(([key, message]) => [key, `⟦${message}⟧`]);
    catalogue[space] = Object.fromEntries(entries);
  }
  return catalogue;
}

/** Builds the app so that it speaks the invented languages beside its own, and gives the folder. */
export async function builtWithInvented(): Promise<string> {
  const outDir = join(tmpdir(), `samewise-languages-${process.pid}`);
  const catalogue = JSON.stringify(parsedCatalogue(await bracketed()));
  const before = process.env.NODE_ENV;
  // A test runner's own would make a build for developers.
  process.env.NODE_ENV = 'production';
  await build({
    root: ROOT,
    configFile: join(ROOT, 'vite.config.ts'),
    logLevel: 'error',
    plugins: [languages(catalogue)],
    worker: { plugins: () => [languages(catalogue)] },
    build: { outDir },
  });
  process.env.NODE_ENV = before;
  return outDir;
}

/** As the code has them. */
const OWN_LANGUAGES = /\['en'[^\]]*\]/;
const OWN_CATALOGUES = /const CATALOGUES: .*= \{[^}]*\}/;
const FETCHED = 'virtual:catalogue';

/** The two lines of code that a language is, and its catalogue. */
function languages(catalogue: string): Plugin {
  const fetching = INVENTED.map((tag) => `'${tag}': () => import('${FETCHED}')`).join(',');
  const replaced = (code: string, part: RegExp, by: string) => {
    if (!part.test(code)) throw new Error(`languages: expected ${part}`);
    return code.replace(part, by);
  };
  return {
    name: 'invented-languages',
    enforce: 'pre',
    resolveId: (id) => (id === FETCHED ? id : undefined),
    load: (id) => (id === FETCHED ? `export default ${catalogue}` : undefined),
    transform: (code, id) => {
      if (id.endsWith('/src/languages/language.ts')) {
        return replaced(code, OWN_LANGUAGES, JSON.stringify(['en', ...INVENTED]));
      }
      if (id.endsWith('/src/languages/catalogues.ts')) {
        return replaced(code, OWN_CATALOGUES, `const CATALOGUES = {${fetching}}`);
      }
      return undefined;
    },
  };
}
