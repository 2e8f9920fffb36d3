// The way a pack is made, together with small papers and with pages to be cut out.
import { expect, test } from 'vitest';
import { testSeed } from '../../tests/seed.ts';
import { pageSize } from '../page/index.ts';
import { MADE, type Pack, TO_CUT } from '../sheets/index.ts';
import { sheetOf } from './guides-to-test.ts';
import { madeFaults, pagesMade } from './pack-pages.ts';

const seed = testSeed('made-pages');
const A4 = pageSize('A4', 'portrait');

function packOn(paper: 'A3' | 'A5', count: number): Pack {
  const page = { paper, orientation: 'landscape' } as const;
  return {
    sheets: Array.from({ length: count }, (_, at) =>
      sheetOf('in-every-box', 1, seed + at, { page, tasks: 1 }),
    ),
  };
}

function pagesOf(pack: Pack, made: (typeof MADE)[number], isSingle = false) {
  const pages = pagesMade(pack, { made }, { isSingle });
  return pages.ok ? [...pages.value.pages] : [];
}

const isA4 = ({ widthMm, heightMm }: { readonly widthMm: number; readonly heightMm: number }) =>
  Math.min(widthMm, heightMm) === A4.widthMm && Math.max(widthMm, heightMm) === A4.heightMm;

test('half-made sheets of A5 come two on one A4, as printed ones do', () => {
  const pack = packOn('A5', 3);
  const printed = pagesOf(pack, 'printed');
  const halfMade = pagesOf(pack, 'half-made');
  expect(halfMade.every(isA4)).toBe(true);
  // One page more: it tells how many stickers go onto each sheet.
  expect(halfMade).toHaveLength(printed.length + 1);
});

test('half-made sheets of A5 come on pages of their own where that is asked for', () => {
  const pages = pagesOf(packOn('A5', 3), 'half-made', true);
  expect(pages.filter((page) => !isA4(page))).toHaveLength(3);
});

test.each(['A3', 'A5'] as const)('what is to be read for %s sheets comes on A4', (paper) => {
  const [adult, list] = pagesOf(packOn(paper, 1), 'half-made');
  expect([adult, list].map((page) => page && isA4(page))).toEqual([true, true]);
  const guide = pagesOf(packOn(paper, 1), 'by-hand').filter(({ title }) =>
    title.startsWith('Make it'),
  );
  expect(guide.length).toBeGreaterThan(0);
  expect(guide.every(isA4)).toBe(true);
});

test('the adult’s page of sheets made by hand says nothing of printing them', () => {
  const said = (made: (typeof MADE)[number]) => JSON.stringify(pagesOf(packOn('A5', 2), made)[0]);
  expect(said('by-hand')).not.toMatch(/True size|dashed line/);
  expect(said('half-made')).toMatch(/True size.*dashed line/);
});

test.each(TO_CUT)('%s go with printed sheets alone', (kind) => {
  const pack = { ...packOn('A5', 1), toCut: [kind] };
  for (const made of MADE) {
    const expected = made === 'printed' ? [] : [{ code: 'unreadable', at: kind, got: made }];
    expect(madeFaults(pack, { made })).toMatchObject(expected);
  }
});
