// What a file that is no backup is told: the place and the reason, in a sentence, and never an error.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Result } from '../src/base/index.ts';
import { BACKUP_CHARACTERS, readBackup } from '../src/records/index.ts';
import { sentenceOf } from '../src/words/index.ts';
import { childEntry, planEntry, resultEntry } from './record-entries.ts';
import { testSeed } from './seed.ts';

const seed = testSeed('backup refusals');
const FERN = childEntry(1, 1, { nickname: 'Fern' });
const PLANNED = { code: '3CFR-YRT7-FF2W-DU', why: 'asked' } as const;
const fileOf = (version: unknown, ...entries: readonly unknown[]) =>
  JSON.stringify({ format: 'samewise.records', version, entries });
const sentences = (read: Result<unknown>) => (read.ok ? [] : read.refusals.map(sentenceOf));

describe('a file that is no backup of this version', () => {
  it.each([
    ['empty', '', 'backup: expected JSON'],
    ['cut off', fileOf(1, FERN).slice(0, 90), 'backup'],
    ['a list', '[]', 'backup: expected an object, got a list of 0.'],
    [
      'of another kind',
      '{"format":"samewise.pack","version":1,"sheets":[]}',
      'backup › format: expected samewise.records, got "samewise.pack".',
    ],
    [
      'of a later version, whatever else it holds',
      '{"format":"samewise.records","version":5,"boxes":{}}',
      'backup: made by version 5; this program reads versions 1, 2, 3, 4. Get a newer Samewise to read it.',
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
      'backup › entries[1].kind: expected one of child, result, plan, stock, picture, undone, child-gone',
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
    [
      'a plan of more than a dozen sheets',
      planEntry(2, 1, { sheets: Array(13).fill(PLANNED) }),
      'backup › entries[1].sheets: expected at most 12 entries',
    ],
    [
      'a plan for a reason that is none',
      { ...planEntry(2, 1), sheets: [{ ...PLANNED, why: 'for luck' }] },
      'backup › entries[1].sheets[0].why: expected one of first-of-skill, nearest,',
    ],
    [
      'a plan of a sheet without code',
      { ...planEntry(2, 1), sheets: [{ why: 'asked' }] },
      'backup › entries[1].sheets[0].code: expected',
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
