// What the adult's page says of sheets that are handled otherwise than laid down: in pockets, cut, folded, mixed.
import { describe, expect, it, test } from 'vitest';
import type { ActivityId } from '../activities/index.ts';
import type { PageChoice } from '../page/index.ts';
import { adultPages } from './adult-page.ts';
import { makePack } from './make-pack.ts';
import { words } from './pages-to-test.ts';
import type { Recipe } from './recipe.ts';

const A4: PageChoice = { paper: 'A4', orientation: 'portrait' };
const POCKET: PageChoice = { ...A4, margin: 'pocket' };

type Part = Partial<Recipe['parts'][number]> & { readonly activity: ActivityId };

function said(parts: readonly Part[], more: Partial<Recipe> = {}): string {
  const whole = parts.map((part) => ({ step: 3, values: {}, sheets: 1, ...part }));
  const pack = makePack({ seed: 3, page: A4, print: 'colour', parts: whole, ...more });
  if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
  return adultPages(pack.value).map(words).join(' ');
}

describe('of sheets for a wipe-clean pocket', () => {
  const POINTED = said([{ activity: 'in-every-box' }], { page: POCKET });

  it('says what to write with, and no more where no more is needed', () => {
    expect(POINTED).toContain('a pen that wipes off in place of crayons and pencil');
    for (const other of ['Stickers would be used up', 'without glue', 'is not folded'])
      expect(POINTED).not.toContain(other);
  });

  it('says nothing of it for others', () => {
    expect(said([{ activity: 'in-every-box' }])).not.toContain('wipe');
  });

  it('lays out no glue, which would spoil the pocket', () => {
    const toCut = ['pieces'] as const;
    expect(said([{ activity: 'one-of-each' }], { toCut })).toContain('a glue stick');
    expect(said([{ activity: 'one-of-each' }], { toCut, page: POCKET })).not.toContain(
      'glue stick',
    );
  });

  it.each([
    ['one-of-each', {}, undefined, 'Stickers would be used up'],
    ['one-of-each', {}, ['pieces'], 'without glue'],
    ['one-of-each', { response: 'cut' }, undefined, 'without glue'],
    ['one-of-each', { response: 'cut' }, undefined, 'print it twice'],
    ['look-and-remember', {}, undefined, 'is not folded there: cover its upper part'],
  ] as const)('%s %j %j: “%4$s”', (activity, values, toCut, sentence) => {
    const more = toCut ? { page: POCKET, toCut } : { page: POCKET };
    expect(said([{ activity, values }], more)).toContain(sentence);
  });
});

test('where pieces stand on the sheet and on a page to cut, it says which to use', () => {
  const toCut = ['pieces'] as const;
  const sentence = 'use those of the page to cut';
  const values = { response: 'cut' };
  expect(said([{ activity: 'one-of-each', values }], { toCut })).toContain(sentence);
  expect(said([{ activity: 'one-of-each' }], { toCut })).not.toContain(sentence);
  expect(said([{ activity: 'one-of-each', values }])).not.toContain(sentence);
});

test('a sheet with several folds is cut apart first', () => {
  const page: PageChoice = { paper: 'A3', orientation: 'portrait' };
  const sentence = 'Cut the tasks of the sheet apart first';
  expect(said([{ activity: 'look-and-remember', tasks: 2 }], { page })).toContain(sentence);
  expect(said([{ activity: 'look-and-remember', tasks: 1 }], { page })).not.toContain(sentence);
});

test('each kind of sheet of several says what is laid out for it alone, and for which age its time is', () => {
  const all = said([
    { activity: 'copy-pattern', step: 3 },
    { activity: 'same-or-different', step: 3 },
    { activity: 'in-every-box', step: 3 },
  ]);
  expect(all).toMatch(
    /\(sheet 1\) Lay out stickers, 16\u00a0mm: \d+ \p{L}+(, \d+ \p{L}+)* and \d/u,
  );
  expect(all).toMatch(/\(sheet 2\) Lay out a pencil Say/);
  expect(all).toMatch(/\(sheet 3\) Lay out nothing Say/);
  expect(all).toMatch(/about \d minutes, for a child of about 3/);
  expect(said([{ activity: 'copy-pattern' }])).not.toContain('(sheet 1) Lay out');
});

test('it takes care of scissors, too', () => {
  expect(said([{ activity: 'in-every-box' }])).toContain('works with stickers or scissors');
});
