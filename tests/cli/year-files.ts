// The files of a year's folder as they are compared.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** Every file under a folder, hidden ones too, with the hash of its bytes. */
export function filesUnder(folder: string): Readonly<Record<string, string>> {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort();
  const files = names.filter((name) => statSync(join(folder, name)).isFile());
  return Object.fromEntries(
    files.map((name) => {
      const bytes = readFileSync(join(folder, name));
      return [name, createHash('sha256').update(bytes).digest('hex')];
    }),
  );
}
