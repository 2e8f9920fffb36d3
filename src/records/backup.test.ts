// What a backup promises: the same text for the same entries, read back whole, or refused with the reason.
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyEntries, childEntry, idAt, resultEntry } from '../../tests/record-entries.ts';
import { testSeed } from '../../tests/seed.ts';
import { backupText, readBackup } from './backup.ts';
import type { Entry } from './entry.ts';
import { merged } from './merge.ts';
import type { Step } from './migrate.ts';

const seed = testSeed('record backup');
const FERN = childEntry(1, 1, { nickname: 'Fern' });
const fileOf = (version: unknown, ...entries: readonly unknown[]) =>
  JSON.stringify({ format: 'samewise.records', version, entries });

function textOf(entries: readonly Entry[]): string {
  const text = backupText(entries);
  if (!text.ok) throw new Error('too long');
  return text.value;
}

describe('a backup', () => {
  it('is read back as the real entries that were written, and no other', () => {
    fc.assert(
      fc.property(anyEntries, (all) => {
        const entries = merged([], all);
        const real = entries.filter((entry) => entry.demo !== true);
        expect(readBackup(textOf(entries))).toEqual({ ok: true, value: real });
      }),
      { seed },
    );
  });

  it('is the same text in whatever order entries and their fields stand', () => {
    const turned = { tasks: [{ outcome: 'right' }], ...resultEntry(2, 1) } as Entry;
    expect(textOf([turned, FERN])).toBe(textOf([FERN, resultEntry(2, 1)]));
  });

  it('can be read by a person: one entry a line, what it is first', () => {
    expect(textOf([resultEntry(2, 1), FERN]).split('\n')).toEqual([
      '{"format":"samewise.records","version":4,"entries":[',
      `{"id":"${idAt(1)}","at":1,"kind":"child","child":"${idAt(1)}","nickname":"Fern"},`,
      `{"id":"${idAt(2)}","at":2,"kind":"result","child":"${idAt(1)}","code":"3CFR-YRT7-FF2W-DU",` +
        '"day":"2026-03-09","tasks":[{"outcome":"right"}]}',
      ']}',
      '',
    ]);
  });
});

describe('a file of an earlier version', () => {
  it('1, with entries of every kind that it had, is read whole', () => {
    const path = new URL('../../tests/stored/records-version-1.json', import.meta.url);
    const text = readFileSync(path, 'utf8');
    expect(text).toContain('"version":1,');
    const written = JSON.parse(text).entries;
    expect(written.map(({ kind }: Entry) => kind)).toEqual([
      ...['child', 'child', 'result', 'result', 'undone', 'child', 'child-gone'],
    ]);
    expect(readBackup(text)).toEqual({ ok: true, value: written });
  });

  it('2, with plans and a stock beside them, is read whole', () => {
    const path = new URL('../../tests/stored/records-version-2.json', import.meta.url);
    const text = readFileSync(path, 'utf8');
    expect(text).toContain('"version":2,');
    const written = JSON.parse(text).entries;
    expect(written.map(({ kind }: Entry) => kind)).toEqual([
      ...['child', 'child', 'result', 'result', 'undone', 'child', 'child-gone', 'plan', 'stock'],
    ]);
    expect(readBackup(text)).toEqual({ ok: true, value: written });
  });

  it('3, with a picture beside them, is read whole', () => {
    const path = new URL('../../tests/stored/records-version-3.json', import.meta.url);
    const text = readFileSync(path, 'utf8');
    expect(text).toContain('"version":3,');
    const written = JSON.parse(text).entries;
    expect(written.map(({ kind }: Entry) => kind)).toEqual([
      ...['child', 'result', 'plan', 'picture', 'stock'],
    ]);
    expect(readBackup(text)).toEqual({ ok: true, value: written });
  });

  /** Two invented earlier forms: the first said `name`, the second `nick`; today's is the real one. */
  const steps: readonly Step[] = [renamed('name', 'nick'), renamed('nick', 'nickname')];
  const { nickname, ...unnamed } = FERN;

  it.each([
    [1, { ...unnamed, name: 'Fern' }],
    [2, { ...unnamed, nick: 'Fern' }],
    [3, FERN],
  ])('%i is brought to today’s, one step after the other', (version, entry) => {
    expect(readBackup(fileOf(version, entry), steps)).toEqual({ ok: true, value: [FERN] });
  });

  it('is refused where it is damaged, and a later one names all versions that are read', () => {
    expect(readBackup(fileOf(1, { ...unnamed, nick: 7 }, null), steps).ok).toBe(false);
    const later = { code: 'unknown-version', at: 'backup', got: 4, known: [1, 2, 3] };
    expect(readBackup(fileOf(4, FERN), steps)).toEqual({ ok: false, refusals: [later] });
  });

  function renamed(from: string, to: string): Step {
    return (entry) =>
      typeof entry === 'object' && entry !== null
        ? Object.fromEntries(
            Object.entries(entry).map(([key, value]) => [key === from ? to : key, value]),
          )
        : entry;
  }
});
