// Documents point only to what is there.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const DOCUMENTS = [
  'README.md',
  'CHANGELOG.md',
  ...documentsIn('docs'),
  ...documentsIn('src/activities'),
];

test.each(DOCUMENTS)('%s links only to files that are there', (document) => {
  const text = readFileSync(join(ROOT, document), 'utf8');
  const links = [...text.matchAll(/\]\(([^)#\s]+)/g)].map(([, target = '']) => target);
  const local = links.filter((target) => !/^[a-z]+:/.test(target));
  expect(local.filter((target) => !existsSync(join(ROOT, dirname(document), target)))).toEqual([]);
});

function documentsIn(folder: string): string[] {
  const names = readdirSync(join(ROOT, folder), { recursive: true, encoding: 'utf8' });
  return names.filter((name) => name.endsWith('.md')).map((name) => join(folder, name));
}
