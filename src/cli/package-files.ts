// What ships beside the program: the page's fonts and the version.
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The package's folder: two above this file, both in `src/cli` and in `dist/cli`. */
const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..');

export interface Fonts {
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

/** A file that ships with the program, by its name from the package's folder on. */
export function readAsset(name: string): Uint8Array {
  return readFileSync(join(ROOT, name));
}

/** A file of the built program, by its name. */
export function programFile(name: string): string {
  return join(ROOT, 'dist', 'cli', name);
}

export function readFonts(): Fonts {
  const font = (name: string) => readAsset(join('assets', 'fonts', name));
  return { regular: font('Andika-Regular.ttf'), bold: font('Andika-Bold.ttf') };
}

export function packageVersion(): string {
  const facts: unknown = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
  return typeof facts === 'object' && facts !== null && 'version' in facts
    ? String(facts.version)
    : '';
}
