// All pages round the tasks in a language that is written from right to left: begun at the right, nothing outside.
import { beforeAll, describe, expect, test } from 'vitest';
import { compose, IDENTITY, type Transform } from '../../src/base/index.ts';
import { guidePages, halfMade, makeGuide, pagesOf } from '../../src/by-hand/index.ts';
import { loadCatalogue } from '../../src/languages/index.ts';
import type { Group, Page, PaperName, SceneNode } from '../../src/page/index.ts';
import {
  makeSheet,
  type Pack,
  packPages,
  rulerPages,
  type Sheet,
  sheetPage,
} from '../../src/sheets/index.ts';
import { loadAllScripts } from '../outside/script-fonts.ts';
import { boundsOf, outsideOf } from '../scene-bounds.ts';

beforeAll(async () => {
  await loadCatalogue('ar');
  await loadAllScripts();
});

function sheetOf(
  activity: 'by-key' | 'in-every-box' | 'mirror-half' | 'continue-row' | 'one-of-each',
  step: number,
  more: Partial<Parameters<typeof makeSheet>[0]> = {},
): Sheet {
  const page = { paper: 'A4' as PaperName, orientation: 'portrait' as const };
  const made = makeSheet({ activity, step, values: {}, seed: 7, page, print: 'colour', ...more });
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  return made.value;
}

/** Middles across of all groups of a role, in the order in which they are drawn. */
function middles(page: Page, role: string): readonly number[] {
  const found = (node: SceneNode, outer: Transform): readonly number[] => {
    if (node.kind !== 'group') return [];
    if (node.role === role) {
      const { left, right } = boundsOf({ kind: 'group', children: [node], transform: outer });
      return [(left + right) / 2];
    }
    const inner = compose(outer, node.transform ?? IDENTITY);
    return node.children.flatMap((child) => found(child, inner));
  };
  return page.nodes.flatMap((node) => found(node, IDENTITY));
}

const whole = (page: Page): Group => ({ kind: 'group', children: page.nodes });
const outside = (page: Page) => outsideOf(whole(page), page.widthMm, page.heightMm);

describe('a page read from the right', () => {
  test('has its code at the left of its foot and its first task at the right', () => {
    const page = sheetPage(sheetOf('one-of-each', 4), 'ar');
    const [qr = 0] = middles(page, 'qr');
    expect(qr).toBeLessThan(0.2 * page.widthMm);
    const [first = 0, second = 0] = middles(page, 'task-place');
    expect(first).toBeGreaterThan(0.6 * page.widthMm);
    expect(second).toBeLessThan(0.4 * page.widthMm);
  });

  test.each([
    ['large', { size: 'large' as const }],
    ['for a pocket', { page: { paper: 'A4', orientation: 'portrait', margin: 'pocket' } as const }],
    ['sideways', { page: { paper: 'A5', orientation: 'landscape' } as const, tasks: 1 }],
    ['to save ink', { ink: 'saving' as const }],
    ['in grey', { print: 'grey' as const }],
  ])('draws the same sheet %s as far from the other side, nothing outside', (_, more) => {
    const sheet = sheetOf('continue-row', 2, more);
    const [plain, page] = [sheetPage(sheet), sheetPage(sheet, 'ar')];
    expect(outside(page)).toEqual([]);
    const expected = middles(plain, 'place').map((x) => page.widthMm - x);
    const found = middles(page, 'place');
    expect(found.length).toBe(expected.length);
    const off = found.map((x, index) => Math.abs(x - (expected[index] ?? 0)));
    expect(Math.max(...off)).toBeLessThan(1e-5);
  });

  test('keeps all that is printed for the adult on the paper, answers and pages to cut among it', () => {
    const sheets = [
      sheetOf('by-key', 3, { child: { name: 'ليلى', number: 1 } } as object),
      sheetOf('mirror-half', 3),
      sheetOf('in-every-box', 2),
    ];
    const pack: Pack = { sheets, toCut: ['pieces', 'key-card', 'cards'] };
    const pages = [...packPages(pack, { language: 'ar' }).pages];
    expect(pages.length).toBeGreaterThan(6);
    for (const page of pages) expect(outside(page), page.title).toEqual([]);
    for (const page of rulerPages('A4', 'ar').pages) expect(outside(page)).toEqual([]);
  });

  test('tells how to make it by hand at the places that the printed sheet has', () => {
    const sheet = sheetOf('in-every-box', 2);
    const [plain, guide] = [makeGuide(sheet), makeGuide(sheet, { language: 'ar' })];
    if (!plain.ok || !guide.ok) throw new Error('expected guides');
    const across = (boxes: typeof plain.value.boxes) =>
      boxes.map(({ leftMm, widthMm }) => leftMm + widthMm / 2);
    expect(across(guide.value.boxes)).toEqual(
      across(plain.value.boxes).map((x) => plain.value.page.widthMm - x),
    );
    for (const page of guidePages(guide.value, 'ar')) expect(outside(page)).toEqual([]);
    const { page, stickers } = halfMade(sheet, { language: 'ar' });
    expect(outside(page)).toEqual([]);
    expect(stickers).toEqual(halfMade(sheet).stickers);
    const adult = pagesOf({ sheets: [sheet] }, { made: 'half-made' }, 'ar').adult();
    for (const list of adult) expect(outside(list)).toEqual([]);
  });
});
