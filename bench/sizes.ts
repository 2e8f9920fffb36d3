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
  const page = readFileSync(join(WEB_FOLDER, 'index.html'), 'utf8');
  const ofFirstScreen = [...page.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.(?:js|css))"/g)].map(
    ([, name = '']) => name,
  );
  const assets = readdirSync(join(WEB_FOLDER, 'assets')).map((name) => `assets/${name}`);
  const worker = (kind: string) =>
    assets.filter((name) => name.startsWith(`assets/${kind}.worker`));
  console.log('\nsizes of the app in KiB (packed with gzip)');
  tell('scripts of the first screen', ofScripts(ofFirstScreen));
  tell('styles of the first screen', ofStyles(ofFirstScreen));
  tell('the worker that makes the sheets', worker('make'));
  tell('the service worker', ['sw.js']);
  tell('all that is stored for visits without a network', [...assets, 'index.html', MANIFEST]);
}

const ofScripts = (names: readonly string[]) => names.filter((name) => name.endsWith('.js'));
const ofStyles = (names: readonly string[]) => names.filter((name) => name.endsWith('.css'));

function tell(what: string, names: readonly string[]): void {
  const { plain, packed } = sizeOf(names);
  const files = names.length === 1 ? '1 file' : `${names.length} files`;
  console.log(`  ${what}: ${inKib(plain)} (${inKib(packed)}), ${files}`);
}

function sizeOf(names: readonly string[]): Size {
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
