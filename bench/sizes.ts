// How much a browser fetches of the app: for the first screen, and in all for later visits without a network.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { buildWeb, WEB_FOLDER } from '../scripts/build-web.mjs';

const KIB = 1024;
const MANIFEST = 'manifest.webmanifest';

interface Size {
  readonly plain: number;
  readonly packed: number;
}

/** Sizes in KiB as they are and packed with gzip, of the build of the present sources. */
export function measureSizes(): void {
  if (!buildWeb()) throw new Error('the app could not be built');
  const assets = allAssets();
  console.log('\nsizes of the app in KiB (packed with gzip)');
  tell('scripts of the first screen', filesOfFirstScreen('js'));
  tell('styles of the first screen', filesOfFirstScreen('css'));
  tell('scripts of Today, those of the first screen among them', filesOfToday());
  tell('the worker that makes the sheets', withImports(named('make.worker')));
  tell('the service worker', ['sw.js']);
  tell('all that is stored for visits without a network', [...assets, 'index.html', MANIFEST]);
}

/** What the page itself names, of the app that is built. */
export function filesOfFirstScreen(ending: 'js' | 'css'): readonly string[] {
  const page = readFileSync(join(WEB_FOLDER, 'index.html'), 'utf8');
  const named = page.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.(\w+))"/g);
  return [...named].flatMap(([, name = '', kind]) => (kind === ending ? [name] : []));
}

/** The scripts of the screen that a family with records begins on, its workers apart. */
export function filesOfToday(): readonly string[] {
  return withImports([
    ...filesOfFirstScreen('js'),
    ...named('ground-').filter((name) => name.endsWith('.js')),
    ...named('today-screen-').filter((name) => name.endsWith('.js')),
  ]);
}

function allAssets(): readonly string[] {
  return readdirSync(join(WEB_FOLDER, 'assets')).map((name) => `assets/${name}`);
}

function named(start: string): readonly string[] {
  return allAssets().filter((name) => name.startsWith(`assets/${start}`));
}

/** With all that they import before they begin. */
function withImports(names: readonly string[]): readonly string[] {
  const all = new Set(names);
  for (const name of all) {
    const code = readFileSync(join(WEB_FOLDER, name), 'utf8');
    for (const [, imported] of code.matchAll(/\bfrom"\.\/([^"]+\.js)"/g))
      all.add(`assets/${imported}`);
  }
  return [...all];
}

function tell(what: string, names: readonly string[]): void {
  const { plain, packed } = sizeOf(names);
  const files = names.length === 1 ? '1 file' : `${names.length} files`;
  console.log(`  ${what}: ${inKib(plain)} (${inKib(packed)}), ${files}`);
}

/** Of files of the app that is built, in bytes. */
export function sizeOf(names: readonly string[]): Size {
  const contents = names.map((name) => readFileSync(join(WEB_FOLDER, name)));
  const sum = (sizes: readonly number[]) => sizes.reduce((one, other) => one + other, 0);
  return {
    plain: sum(contents.map((content) => content.length)),
    packed: sum(contents.map((content) => gzipSync(content).length)),
  };
}

function inKib(bytes: number): string {
  return (bytes / KIB).toFixed(bytes < 10 * KIB ? 1 : 0);
}
