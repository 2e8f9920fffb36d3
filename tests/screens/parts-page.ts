// Builds the screen for tests that uses the parts which the screens about children share.
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { WEB_FOLDER } from '../../scripts/build-web.mjs';

const PARTS = fileURLToPath(new URL('parts', import.meta.url));
const CONFIG = fileURLToPath(new URL('../../vite.config.ts', import.meta.url));
const FOLDER = join(dirname(WEB_FOLDER), 'parts');

/** The folder of the built page, as the app itself would be built. */
export async function buildParts(): Promise<string> {
  await build({
    root: PARTS,
    configFile: CONFIG,
    logLevel: 'warn',
    build: { outDir: FOLDER, emptyOutDir: true },
  });
  return FOLDER;
}
