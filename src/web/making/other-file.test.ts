// A file of another kind is told from one that is faulty inside.
import { expect, test } from 'vitest';
import { readBackup } from '../../records/index.ts';
import { openPackText } from '../../sheets/index.ts';
import { isOtherFile } from './other-file.ts';

const READERS = { pack: openPackText, backup: readBackup } as const;

function isOther(text: string, what: keyof typeof READERS): boolean {
  const read = READERS[what](text);
  return !read.ok && isOtherFile(read.refusals, what);
}

test.each([
  'hello',
  '',
  '[1]',
  '7',
  '{"a":1}',
  '{"format":7}',
  '{"format":"a shopping list","version":1}',
])('%j is neither a pack file nor a backup', (text) => {
  expect([isOther(text, 'pack'), isOther(text, 'backup')]).toEqual([true, true]);
});

test.each([
  ['pack', '{"format":"samewise.pack","version":1,"sheets":['],
  ['backup', '{"format":"samewise.records","version":2,"entries":['],
  ['pack', '{"format":"samewise.records","version":2,"entries":[]}'],
  ['backup', '{"format":"samewise.pack","version":1,"sheets":[]}'],
] as const)('a %s that is cut off, or a file of the other kind, is none: %s', (what, text) => {
  expect(isOther(text, what)).toBe(true);
});

test.each([
  ['pack', '{"format":"samewise.pack","version":9}'],
  ['pack', '{"format":"samewise.pack","version":1,"sheets":[{"code":"2222"}]}'],
  ['backup', '{"format":"samewise.records","version":99,"entries":[]}'],
  ['backup', '{"format":"samewise.records","version":2,"entries":[{"kind":"cat"}]}'],
] as const)('a %s of a later version, or with a fault inside, is told of: %s', (what, text) => {
  expect(READERS[what](text).ok).toBe(false);
  expect(isOther(text, what)).toBe(false);
});
