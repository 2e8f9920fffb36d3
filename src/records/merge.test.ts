// What merging promises: a union in any order, and nothing lost.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  anyEntries,
  childEntry,
  idAt,
  planEntry,
  resultEntry,
} from '../../tests/record-entries.ts';
import { testSeed } from '../../tests/seed.ts';
import { bodyText, type Entry } from './entry.ts';
import { changedSince, idsOfChild, idsOfDemo, merged } from './merge.ts';
import { viewOf } from './views.ts';

const seed = testSeed('record merging');

describe('merging', () => {
  it('is the same in either order', () => {
    fc.assert(
      fc.property(anyEntries, anyEntries, (a, b) => {
        expect(merged(a, b)).toEqual(merged(b, a));
      }),
      { seed },
    );
  });

  it('is the same whichever two come together first', () => {
    fc.assert(
      fc.property(anyEntries, anyEntries, anyEntries, (a, b, c) => {
        expect(merged(merged(a, b), c)).toEqual(merged(a, merged(b, c)));
      }),
      { seed },
    );
  });

  it('again changes nothing', () => {
    fc.assert(
      fc.property(anyEntries, anyEntries, (a, b) => {
        const once = merged(a, b);
        expect(merged(once, b)).toEqual(once);
        expect(merged(once, once)).toEqual(once);
        expect(changedSince(once, merged(once, a))).toEqual([]);
      }),
      { seed },
    );
  });

  it('loses nothing, makes nothing up, and gives each id once', () => {
    fc.assert(
      fc.property(anyEntries, anyEntries, (a, b) => {
        const both = merged(a, b);
        expect(new Set(both.map(bodyText))).toEqual(new Set([...a, ...b].map(bodyText)));
        expect(new Set(both.map(({ id }) => id)).size).toBe(both.length);
      }),
      { seed },
    );
  });

  it('keeps both of two results with one id, in view as the same sheet recorded twice', () => {
    const child = childEntry(1, 1, { nickname: 'Fern' });
    const mine = resultEntry(2, 1, { note: 'as it was' });
    const edited = resultEntry(2, 1, { note: 'changed by hand' });
    const [one, other] = viewOf(merged([child, mine], [child, edited])).results.get(idAt(1)) ?? [];
    expect([one?.note, other?.note].sort()).toEqual(['as it was', 'changed by hand']);
    expect(one?.alsoRecorded).toEqual([other?.id]);
    expect(other?.alsoRecorded).toEqual([one?.id]);
  });
});

describe('deleting for good', () => {
  const left = (entries: readonly Entry[], ids: readonly string[]) =>
    entries.filter(({ id }) => !ids.includes(id));

  it('leaves nothing that names the child, and all of the others', () => {
    const entries: readonly Entry[] = [
      childEntry(1, 1, { nickname: 'Fern' }),
      childEntry(2, 2, { nickname: 'Wren' }),
      resultEntry(3, 1),
      resultEntry(4, 2),
      { id: idAt(5), at: 5, kind: 'undone', entry: idAt(3) },
      { id: idAt(6), at: 6, kind: 'undone', entry: idAt(5) },
      { id: idAt(7), at: 7, kind: 'undone', entry: idAt(4) },
      { id: idAt(8), at: 8, kind: 'child-gone', child: idAt(1) },
      planEntry(9, 1),
      planEntry(10, 2),
      { id: idAt(11), at: 11, kind: 'undone', entry: idAt(9) },
    ];
    const after = left(entries, idsOfChild(entries, idAt(1)));
    expect(after.map(({ id }) => id)).toEqual([2, 4, 7, 10].map(idAt));
  });

  it('of the invented group leaves exactly the real entries', () => {
    fc.assert(
      fc.property(anyEntries, (entries) => {
        const unique = merged([], entries);
        const after = left(unique, idsOfDemo(unique));
        expect(after).toEqual(unique.filter((entry) => entry.demo !== true));
      }),
      { seed },
    );
  });
});
