// The pages of a guide: nothing cut off, everything said, as many as it takes.
import { describe, expect, test } from 'vitest';
import { placedIn } from '../../tests/scene-bounds.ts';
import { testSeed } from '../../tests/seed.ts';
import { ACTIVITY_IDS, activityOf } from '../activities/index.ts';
import type { Page, PageChoice } from '../page/index.ts';
import { packMaterials, type Sheet, sheetPage } from '../sheets/index.ts';
import { guidePages } from './guide-pages.ts';
import { guideOf, sheetOf } from './guides-to-test.ts';
import { madeFaults, pagesMade } from './pack-pages.ts';
import { quickRecipe } from './quick.ts';

const seed = testSeed('guide pages');
const PAGES: readonly PageChoice[] = [
  { paper: 'A4', orientation: 'portrait' },
  { paper: 'Letter', orientation: 'landscape' },
];

const placedOn = ({ nodes }: Page) => nodes.flatMap((node) => placedIn(node));
const words = (page: Page) =>
  placedOn(page)
    .flatMap(({ node }) => (node.kind === 'text' ? [node.text] : []))
    .join(' ');

/** What sticks out of the margin of 12 mm by more than half a line and what is below a letter's foot. */
function overEdge(page: Page): string[] {
  const [right, bottom] = [page.widthMm - 10.5, page.heightMm - 10.5];
  return placedOn(page)
    .filter(
      ({ bounds }) =>
        bounds.left < 10.5 || bounds.top < 10.5 || bounds.right > right || bounds.bottom > bottom,
    )
    .map(({ node: { kind }, bounds }) => `${kind} ${JSON.stringify(bounds)}`);
}

const said = (sheet: Sheet) => guidePages(guideOf(sheet)).map(words).join(' ');

describe.each(ACTIVITY_IDS)('%s', (id) => {
  const { length } = activityOf(id).ladder;

  test.each(PAGES)('on $paper $orientation every page keeps its margin', (page) => {
    for (const step of [1, Math.ceil(length / 2)]) {
      const sheet = sheetOf(id, step, seed, { page, tasks: 1 });
      for (const each of guidePages(guideOf(sheet))) {
        expect(overEdge(each), each.title).toEqual([]);
      }
    }
  });

  test('says what to lay out, each number of its list once, the answers and the code', () => {
    const sheet = sheetOf(id, Math.ceil(length / 2), seed);
    const guide = guideOf(sheet);
    const all = said(sheet);
    const list = all.slice(0, all.lastIndexOf('Answers'));
    for (const { number } of guide.placements) {
      expect(list.match(new RegExp(`(?<![\\d.])${number}\\. `, 'g')), `${number}`).toHaveLength(1);
    }
    for (const part of ['Lay out', 'How it will look', 'At the end', 'Answers', sheet.code]) {
      expect(all).toContain(part);
    }
    for (const { printed, answer } of sheet.tasks) {
      const words = activityOf(id).words.en.answer(printed, answer);
      expect(all.replaceAll(/\s/g, ' ')).toContain(words.replaceAll(/\s/g, ' '));
    }
    for (const { count, colour, diameterMm } of packMaterials([sheet]).stickers) {
      expect(all).toMatch(new RegExp(`${count} ${colour} stickers? of ${diameterMm}\\smm`));
    }
  });
});

test('answers that are higher than a page are parted, and all of them said', () => {
  const page: PageChoice = { paper: 'A3', orientation: 'landscape' };
  const sheet = sheetOf('mirror-half', 10, 5, { page, tasks: 9 });
  const pages = guidePages(guideOf(sheet));
  for (const each of pages) expect(overEdge(each)).toEqual([]);
  const all = pages.map(words).join(' ').replaceAll(/\s/g, ' ');
  for (const { printed, answer } of sheet.tasks) {
    const one = activityOf('mirror-half').words.en.answer(printed, answer);
    expect(all).toContain(one.replaceAll(/\s/g, ' '));
  }
});

test('what no hand draws freely is said plainly and given over squares', () => {
  const tangle = said(sheetOf('tangle', 1, seed));
  expect(tangle).toMatch(/no one draws freely.*square by square/s);
  expect(tangle).toContain('Each square is 5');
  const pictures = said(sheetOf('odd-one-out', 13, seed));
  expect(pictures).toMatch(/pictures or patterns are too rich to draw from words/);
  expect(pictures).toContain('Each square is 5');
  expect(said(sheetOf('in-every-box', 1, seed))).not.toContain('Each square is 5');
});

test('a pack by hand has the adult’s page, the guides, and no answer pages; printed it is as ever', () => {
  const sheets = [sheetOf('in-every-box', 1, seed, { tasks: 1 })];
  const pages = pagesMade({ sheets }, { made: 'by-hand' });
  expect(pages.ok && [...pages.value.pages].map(({ title }) => title.split(' (')[0])).toEqual([
    'For the adult',
    'Make it by hand: in every box, step 1',
  ]);
  const printed = pagesMade({ sheets }, {});
  const only = sheets.map((sheet) => sheetPage(sheet));
  expect(printed.ok && [...printed.value.pages].slice(1, 2)).toEqual(only);
});

test.each(['ليلى', '🌿 Fern', 'x'.repeat(200)])('a guide for %s keeps its margin', (name) => {
  const sheet = { ...sheetOf('in-every-box', 1, seed), child: { number: 1, name } };
  for (const page of guidePages(guideOf(sheet))) expect(overEdge(page)).toEqual([]);
});

test('stickers that are larger than the places of a sheet are refused, with the largest that fit', () => {
  const sheets = [sheetOf('in-every-box', 8, seed)];
  const [refusal, ...others] = madeFaults({ sheets }, { made: 'by-hand', stickerMm: 40 });
  expect(others).toEqual([]);
  expect(refusal).toMatchObject({ code: 'does-not-fit', got: 40 });
  const max = refusal?.code === 'does-not-fit' ? refusal.max : 0;
  expect(madeFaults({ sheets }, { made: 'by-hand', stickerMm: max })).toEqual([]);
  expect(madeFaults({ sheets }, { made: 'by-hand', stickerMm: 0 })).toMatchObject([
    { code: 'out-of-range', got: 0 },
  ]);
});

test('the quickest layout has one task, and takes no longer than the one that was asked for', () => {
  for (const activity of ['in-every-box', 'by-key', 'continue-row'] as const) {
    for (const step of [1, 5]) {
      const part = { activity, step, values: {}, sheets: 1 };
      const [quick] = quickRecipe({
        page: PAGES[0] as PageChoice,
        print: 'colour',
        parts: [part],
      }).parts;
      expect(quick?.tasks).toBe(1);
      const minutesOf = (values: typeof part.values) =>
        guideOf(sheetOf(activity, step, 1, { tasks: 1, values })).minutes;
      const mean = (values: typeof part.values) =>
        guideOf(sheetOf(activity, step, 1, { tasks: 1, values })).minutes +
        guideOf(sheetOf(activity, step, 2, { tasks: 1, values })).minutes +
        guideOf(sheetOf(activity, step, 3, { tasks: 1, values })).minutes;
      expect(minutesOf(quick?.values ?? {})).toBeGreaterThan(0);
      expect(mean(quick?.values ?? {})).toBeLessThanOrEqual(mean({}) + 0.01);
    }
  }
});
