// What is in view: from entries alone, in any order, with what was taken back left out.
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
import type { Entry } from './entry.ts';
import { merged } from './merge.ts';
import { MOST_NAMED, viewOf } from './views.ts';

const seed = testSeed('record views');
const FERN = childEntry(1, 1, { nickname: 'Fern', birthMonth: '2022-05', writingHand: 'left' });
const undone = (n: number, entry: number): Entry => ({
  id: idAt(n),
  at: n,
  kind: 'undone',
  entry: idAt(entry),
});
const gone = (n: number, child: number): Entry => ({
  id: idAt(n),
  at: n,
  kind: 'child-gone',
  child: idAt(child),
});
const idsOf = (entries: readonly Entry[]) =>
  viewOf(entries)
    .results.get(idAt(1))
    ?.map(({ id }) => id);

describe('a view', () => {
  it('does not hang on the order in which entries are kept', () => {
    const shuffled = anyEntries
      .map((entries) => merged([], entries))
      .chain((entries) =>
        fc.tuple(
          fc.constant(entries),
          fc.shuffledSubarray([...entries], { minLength: entries.length }),
        ),
      );
    fc.assert(
      fc.property(shuffled, ([entries, otherwise]) => {
        expect(viewOf(otherwise)).toEqual(viewOf(entries));
      }),
      { seed },
    );
  });

  it('of one shelf is as if the other were empty', () => {
    fc.assert(
      fc.property(anyEntries, (all) => {
        const entries = merged([], all);
        const real = entries.filter((entry) => entry.demo !== true);
        const demo = entries.filter((entry) => entry.demo === true);
        expect(viewOf(entries, 'real')).toEqual(viewOf(real, 'real'));
        expect(viewOf(entries, 'demo')).toEqual(viewOf(demo, 'demo'));
        expect(viewOf(real, 'demo').children).toEqual([]);
      }),
      { seed },
    );
  });
});

describe('a child', () => {
  it('has what later entries say and, where they are silent, what earlier ones said', () => {
    const later = childEntry(3, 1, { nickname: 'Fern B', birthMonth: null });
    const latest = childEntry(4, 1, { languages: ['en', 'pl'] });
    expect(viewOf([latest, FERN, later]).children).toEqual([
      { id: idAt(1), nickname: 'Fern B', writingHand: 'left', languages: ['en', 'pl'] },
    ]);
  });

  it('is as before once a change is taken back, and out of view once its making is', () => {
    const change = childEntry(2, 1, { nickname: 'Moss' });
    expect(viewOf([FERN, change, undone(3, 2)]).children[0]?.nickname).toBe('Fern');
    const unmade = viewOf([FERN, resultEntry(2, 1), undone(3, 1)]);
    expect([unmade.children, unmade.gone, unmade.results.size]).toEqual([[], [], 0]);
  });

  it('that is gone is out of view with its results, later ones too, until that is taken back', () => {
    const entries = [FERN, resultEntry(2, 1), gone(3, 1), resultEntry(4, 1)];
    const without = viewOf(entries);
    expect([without.children, without.results.size]).toEqual([[], 0]);
    expect(without.gone.map(({ nickname }) => nickname)).toEqual(['Fern']);
    expect(idsOf([...entries, undone(5, 3)])).toEqual([idAt(2), idAt(4)]);
  });
});

describe('results', () => {
  it('stand by the day on which the sheet was given, within a day as recorded', () => {
    const late = resultEntry(5, 1, { day: '2026-03-07' });
    const entries = [FERN, resultEntry(4, 1), resultEntry(3, 1, { day: '2026-03-08' }), late];
    expect(idsOf([...entries, resultEntry(2, 1)])).toEqual([5, 3, 2, 4].map(idAt));
  });

  it('taken back are out of view, and back in view once that is taken back too', () => {
    const entries = [FERN, resultEntry(2, 1), undone(3, 2)];
    expect(idsOf(entries)).toEqual([]);
    expect(idsOf([...entries, undone(4, 3)])).toEqual([idAt(2)]);
    expect(idsOf([...entries, undone(4, 3), undone(5, 4)])).toEqual([]);
  });

  it('are not taken back by what is older than they are, nor by a ring', () => {
    expect(idsOf([FERN, undone(2, 3), resultEntry(3, 1)])).toEqual([idAt(3)]);
    expect(idsOf([FERN, resultEntry(2, 1), undone(3, 4), undone(4, 3), undone(5, 2)])).toEqual([]);
  });

  it('of one sheet, child and day from two devices are both there, each naming the other', () => {
    const twice = [FERN, resultEntry(2, 1), resultEntry(3, 1, { mood: 'tired' })];
    const others = [
      resultEntry(4, 1, { day: '2026-03-10' }),
      resultEntry(5, 1, { code: '2346-7' }),
    ];
    const results = viewOf([...twice, ...others]).results.get(idAt(1)) ?? [];
    expect(results.map(({ id, alsoRecorded }) => [id, alsoRecorded])).toEqual([
      [idAt(2), [idAt(3)]],
      [idAt(3), [idAt(2)]],
      [idAt(5), []],
      [idAt(4), []],
    ]);
  });

  it('of one sheet and day, very many of them, each name a few others and no more', () => {
    const many = Array.from({ length: 3000 }, (_, index) => resultEntry(index + 2, 1));
    const results = viewOf([FERN, ...many]).results.get(idAt(1)) ?? [];
    expect(results).toHaveLength(3000);
    const isFew = results.every(
      ({ id, alsoRecorded }) => alsoRecorded.length === MOST_NAMED && !alsoRecorded.includes(id),
    );
    expect(isFew).toBe(true);
  });
});

describe('plans', () => {
  const other = planEntry(3, 1, { sheets: [{ code: '2346-7', why: 'asked' }] });
  const plansOf = (...entries: readonly Entry[]) => viewOf([FERN, ...entries]).plans.get(idAt(1));

  it('of a child and day are the latest one, and the days stand in order', () => {
    const early = planEntry(4, 1, { day: '2026-03-08' });
    const first = planEntry(2, 1);
    expect([...(plansOf(other, first, early) ?? [])]).toEqual([
      ['2026-03-08', early],
      ['2026-03-09', other],
    ]);
  });

  it('of no sheets replace what was planned, and taking them back brings it back', () => {
    const nothing = planEntry(4, 1, { sheets: [] });
    expect(plansOf(other, nothing)?.get('2026-03-09')).toEqual(nothing);
    expect(plansOf(other, nothing, undone(5, 4))?.get('2026-03-09')).toEqual(other);
    expect(plansOf(other, undone(5, 3))?.size).toBe(0);
  });

  it('go out of view with their child', () => {
    expect(plansOf(other, gone(5, 1))).toBeUndefined();
  });
});
