// What lies on the table is what is printed: the first sheets of a pack that are made for it are those of the whole.
import { expect, test } from 'vitest';
import { makeSheet, type Sheet } from '../../sheets/index.ts';
import { FIRST_ENTRIES } from '../recipe/entries.ts';
import { changedText } from './changed-texts.ts';
import { keptPack, sheetIn } from './kept-pack.ts';
import { type PackAsked, packOf, sheetsOf } from './pack-of.ts';
import { show } from './show.ts';

const entries = { ...FIRST_ENTRIES, activity: 'in-every-box', step: 6, sheets: 2, seed: 3 };
const group = { names: 'Wren\nMoss+1, Fern\nBay-1, Wren', sortedBy: 'child' } as const;

function wholeOf(asked: PackAsked): readonly Sheet[] {
  const pack = packOf(asked);
  if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
  return pack.value.sheets;
}

function keptOf(asked: PackAsked, needed: number): readonly Sheet[] {
  const pack = keptPack(asked, needed);
  if (!pack.ok) throw new Error(JSON.stringify(pack.refusals));
  return pack.value.sheets;
}

/** The sheet with a figure of its first task in another colour. */
function changedCode({ spec }: Sheet): string {
  const figures = [[0, { colour: 'brown' }]] as const;
  const made = makeSheet({
    ...spec,
    edits: [{ task: 0, seed: 1, figures, shape: [], facts: [] }],
  });
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  return made.value.code;
}

test.each([
  ['child', 'child'],
  ['activity', 'activity'],
] as const)('each sheet of a group is the one of the whole pack, by %s', (_, sortedBy) => {
  const asked = { entries, group: { ...group, sortedBy } };
  const whole = wholeOf(asked);
  expect(sheetsOf(asked)).toEqual({ ok: true, value: whole.length });
  for (const [index, sheet] of whole.entries()) {
    // Another pack between them, so that none is still there from before.
    keptOf({ entries: { ...entries, seed: 4 } }, 1);
    expect(sheetIn({ sheets: keptOf(asked, index + 1) }, index + 1)).toEqual(sheet);
    expect(show(asked, 'sheet', { wanted: index + 1, leaf: 1 })).toMatchObject({
      ok: true,
      value: {
        code: sheet.code,
        sheets: whole.length,
        child: { number: sheet.child?.number, children: 5, sheets: 2 },
      },
    });
  }
});

test('for the first child no more is made than the sheets before its own ask for', () => {
  const names = Array.from({ length: 40 }, (_, index) => `c${index}`).join('\n');
  keptOf({ entries }, 1);
  expect(keptOf({ entries, group: { ...group, names } }, 1)).toHaveLength(entries.sheets);
});

test('a changed sheet is in the pack wherever its child has gone, and no other is changed', () => {
  const before = wholeOf({ entries, group });
  const fern = before.find(({ child }) => child?.name === 'Fern');
  if (fern === undefined) throw new Error('expected a sheet for Fern, got none');
  const code = changedCode(fern);
  const changed = [changedText(before.indexOf(fern) + 1, code)];
  for (const names of [group.names, 'Fern', 'Bay-1\nWren\nOak\nMoss+1\nFern']) {
    const asked = { entries: { ...entries, changed }, group: { ...group, names } };
    const plain = wholeOf({ entries, group: asked.group });
    const whole = wholeOf(asked);
    expect(keptOf(asked, 1).filter((sheet) => sheet.code === code)).toHaveLength(
      plain.some((sheet) => sheet.code === fern.code) ? 1 : 0,
    );
    expect(whole.filter((sheet, index) => sheet.code !== plain[index]?.code).length).toBeLessThan(
      2,
    );
    expect(keptOf(asked, whole.length)).toEqual(whole);
  }
});

test('names that no group can be made of are refused before a sheet is made', () => {
  expect(keptPack({ entries, group: { ...group, names: ', ,' } }, 1)).toMatchObject({
    ok: false,
    refusals: [{ code: 'missing', at: 'group' }],
  });
});
