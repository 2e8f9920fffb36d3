// What reading a file promises: a limit in characters, whatever they take, and a refusal for all that cannot be read.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { Refused } from './failure.ts';
import { readText } from './read-text.ts';

const folder = mkdtempSync(join(tmpdir(), 'samewise-'));
afterAll(() => rmSync(folder, { recursive: true }));

function fileWith(bytes: string | Uint8Array): string {
  const path = join(folder, 'file.txt');
  writeFileSync(path, bytes);
  return path;
}

function refusalOf(call: () => unknown) {
  try {
    call();
  } catch (error) {
    if (error instanceof Refused) return error.refusals[0];
    throw error;
  }
  return undefined;
}

describe('readText', () => {
  it('reads as many characters as the limit says, be they Latin, Devanagari or beyond the first plane', () => {
    for (const character of ['a', 'é', 'अ', '子', '🌿']) {
      const text = character.repeat(10);
      expect(readText(fileWith(text), 'list', text.length)).toBe(text);
    }
  });

  it('refuses a file that is bigger than so many characters can be, before it reads it', () => {
    const path = fileWith('x'.repeat(31));
    expect(refusalOf(() => readText(path, 'list', 10))).toEqual({
      ...{ code: 'too-big', at: 'list', got: 31, max: 30, unit: 'bytes' },
    });
  });

  it.each([
    ['a file that is not there', () => join(folder, 'none'), 'there is no such file'],
    ['a folder', () => folder, 'it is a folder'],
    ['what is no UTF-8', () => fileWith(Uint8Array.of(0xff)), 'not text in UTF-8'],
    // The system opens it, has no size for it, and then refuses to read where nothing lies.
    ['what can be opened and not read', () => '/proc/self/mem', 'a file that can be read'],
  ])('refuses %s by its name and with the reason', (_, path, reason) => {
    const at = path();
    const refusal = refusalOf(() => readText(at, 'list', 10));
    expect(refusal).toMatchObject({ code: 'unreadable', at: 'list', got: at });
    expect(JSON.stringify(refusal)).toContain(reason);
  });
});
