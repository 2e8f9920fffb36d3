// What a backup promises: the same text for the same entries, read back whole, or refused with the reason.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyEntries, childEntry, idAt, resultEntry } from '../../tests/record-entries.ts';
import { testSeed } from '../../tests/seed.ts';
import type { Result } from '../base/index.ts';
import { sentenceOf } from '../words/index.ts';
import { BACKUP_CHARACTERS, backupText, readBackup } from './backup.ts';
import type { Entry } from './entry.ts';
import { merged } from './merge.ts';
import type { Step } from './migrate.ts';

const seed = testSeed('record backup');
const FERN = childEntry(1, 1, { nickname: 'Fern' });
const fileOf = (version: unknown, ...entries: readonly unknown[]) =>
  JSON.stringify({ format: 'samewise.records', version, entries });
const sentences = (read: Result<unknown>) => (read.ok ? [] : read.refusals.map(sentenceOf));

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
      '{"format":"samewise.records","version":1,"entries":[',
      `{"id":"${idAt(1)}","at":1,"kind":"child","child":"${idAt(1)}","nickname":"Fern"},`,
      `{"id":"${idAt(2)}","at":2,"kind":"result","child":"${idAt(1)}","code":"3CFR-YRT7-FF2W-DU",` +
        '"day":"2026-03-09","tasks":[{"outcome":"right"}]}',
      ']}',
      '',
    ]);
  });
});

describe('a file that is no backup of this version', () => {
  it.each([
    ['empty', '', 'backup: expected JSON'],
    ['cut off', textOf([FERN]).slice(0, 90), 'backup'],
    ['a list', '[]', 'backup: expected an object, got a list of 0.'],
    [
      'of another kind',
      '{"format":"samewise.pack","version":1,"sheets":[]}',
      'backup › format: expected samewise.records, got "samewise.pack".',
    ],
    [
      'of a later version, whatever else it holds',
      '{"format":"samewise.records","version":2,"boxes":{}}',
      'backup: made by version 2; this program reads version 1. Get a newer Samewise to read it.',
    ],
    ['of no version', fileOf(undefined), 'backup › version: expected a whole number'],
    ['of version 0', fileOf(0), 'backup › version: expected 1 to'],
    [
      'without entries',
      '{"format":"samewise.records","version":1}',
      'backup › entries: expected a list, got nothing.',
    ],
    [
      'with more fields',
      '{"format":"samewise.records","version":1,"entries":[],"x":1}',
      'backup: "x" is not known here.',
    ],
    [
      'with a key that reaches into prototypes',
      '{"format":"samewise.records","version":1,"__proto__":{}}',
      'backup: "__proto__" is not known here.',
    ],
  ])('that is %s is refused with the place and the reason', (_, text, start) => {
    expect(sentences(readBackup(text))[0]?.slice(0, start.length)).toBe(start);
  });

  it.each([
    [
      'an unknown kind',
      { ...FERN, kind: 'badge' },
      'backup › entries[1].kind: expected one of child, result, undone, child-gone',
    ],
    [
      'an unknown field',
      { ...FERN, surname: 'x' },
      'backup › entries[1]: "surname" is not known here.',
    ],
    [
      'an id of another kind',
      { ...FERN, id: '1' },
      'backup › entries[1].id: expected an id, got "1".',
    ],
    [
      'an id from the far future',
      { ...FERN, id: 'ffffffff-ffff-7fff-bfff-ffffffffffff' },
      'backup › entries[1].id: expected an id',
    ],
    [
      'a nickname of spaces',
      { ...FERN, nickname: '  ' },
      'backup › entries[1].nickname: expected a nickname',
    ],
    [
      'a nickname without end',
      { ...FERN, nickname: 'x'.repeat(41) },
      'backup › entries[1].nickname: expected at most 40 characters',
    ],
    [
      'a month that is none',
      { ...FERN, birthMonth: '2022-13' },
      'backup › entries[1].birthMonth: expected a month such as 2022-05',
    ],
    [
      'a day that is none',
      resultEntry(2, 1, { day: '2026-02-29' }),
      'backup › entries[1].day: expected a day such as 2026-03-09',
    ],
    [
      'a code that is none',
      resultEntry(2, 1, { code: '<b>' }),
      'backup › entries[1].code: expected a sheet code as it is printed',
    ],
    [
      'a result without tasks',
      resultEntry(2, 1, { tasks: [] }),
      'backup › entries[1].tasks: expected at least 1 entries',
    ],
    ['a time before time', { ...FERN, at: -1 }, 'backup › entries[1].at: expected 0 to'],
    ['nothing at all', null, 'backup › entries[1]: expected'],
  ])('that holds %s is refused as a whole', (_, entry, start) => {
    const read = readBackup(fileOf(1, FERN, entry));
    expect(sentences(read)[0]?.slice(0, start.length)).toBe(start);
  });

  it('that is longer than any backup is refused before it is read', () => {
    const read = readBackup(' '.repeat(BACKUP_CHARACTERS + 1));
    expect(read).toMatchObject({ ok: false, refusals: [{ code: 'too-big', at: 'backup' }] });
  });

  it('never throws, whatever stands in it', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), fc.json(), (text, entry) => {
        expect(readBackup(text).ok).toBe(false);
        expect(readBackup(fileOf(1, JSON.parse(entry))).ok).toBe(false);
      }),
      { seed },
    );
  });
});

describe('a file of an earlier version', () => {
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
    expect(sentences(readBackup(fileOf(4, FERN), steps))).toEqual([
      'backup: made by version 4; this program reads versions 1, 2, 3. Get a newer Samewise to read it.',
    ]);
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
