// What books of rungs promise each other: what one measured is what another would have, also after a way through a worker.
import { describe, expect, it } from 'vitest';
import { rungBook } from './rung-book.ts';

const PRINT = { print: 'colour' } as const;
const ASKED = { content: 'colours' };

describe('a book of rungs', () => {
  it('hands over what it measured of an activity, and of no other', () => {
    const book = rungBook(PRINT);
    book.rung('copy-pattern', ASKED, 1);
    book.rung('same-or-different', ASKED, 1);
    const { ladders, rungs } = book.pagesOf('copy-pattern');
    expect(ladders).toHaveLength(1);
    expect(rungs.map(([, { activity, step }]) => [activity, step])).toEqual([['copy-pattern', 1]]);
    expect(book.pagesOf('by-key')).toEqual({ ladders: [], rungs: [] });
  });

  it('answers with what it was told, which is what it would measure itself', () => {
    const [first, told, alone] = [rungBook(PRINT), rungBook(PRINT), rungBook(PRINT)];
    const measured = first.rung('copy-pattern', ASKED, 2);
    const pages = structuredClone(first.pagesOf('copy-pattern'));
    told.add(pages);
    expect(told.rung('copy-pattern', ASKED, 2)).toBe(pages.rungs[0]?.[1]);
    expect(told.rung('copy-pattern', ASKED, 2)).toEqual(measured);
    expect(alone.rung('copy-pattern', ASKED, 2)).toEqual(measured);
    expect(told.count('copy-pattern', ASKED)).toBe(alone.count('copy-pattern', ASKED));
  });
});
