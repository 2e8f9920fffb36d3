// The world of Node, in a process of its own that was started somewhere else: bundles come in, the world goes out.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { type Bundle, makeWorld } from './world.ts';

const ROOT = process.cwd();
const { resolve } = createRequire(join(ROOT, 'package.json'));

/** A file of the fonts, of this package or of another. */
function fontFile(file: string): Uint8Array {
  return new Uint8Array(
    readFileSync(file.startsWith('assets/') ? join(ROOT, file) : resolve(file)),
  );
}

process.once('message', async (bundles) => {
  const fonts = {
    regular: fontFile('assets/fonts/Andika-Regular.ttf'),
    bold: fontFile('assets/fonts/Andika-Bold.ttf'),
  };
  const read = async (file: string) => fontFile(file);
  const world = await makeWorld(bundles as readonly Bundle[], { fonts, read });
  process.send?.(world, () => process.disconnect());
});
