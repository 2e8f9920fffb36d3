// Builds the screen for tests that uses the parts which the screens about children share.
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { ROOT } from '../../scripts/install.mjs';

const PARTS = fileURLToPath(new URL('parts', import.meta.url));
const FOLDER = join(ROOT, 'dist', 'parts');

/** The folder of the built page, as the app itself would be built. */
export async function buildParts(): Promise<string> {
  await build({
    root: PARTS,
    configFile: join(ROOT, 'vite.config.ts'),
    logLevel: 'warn',
    build: { outDir: FOLDER, emptyOutDir: true },
  });
  return FOLDER;
}
