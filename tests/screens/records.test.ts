// The record store in a real browser with a real disk: what was saved stays, and every fault is told plainly.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { Draft, Entry } from '../../src/records/index.ts';
import { sentenceOf } from '../../src/words/index.ts';
import { append, entriesOf, FERN, given, ready, refusalsIn, startStores } from './stores.ts';

const stores = startStores();
const { tabOf } = stores;

function countOf(page: Page) {
  return page.evaluate(() => window.kept.store.count());
}

/** A child and many results whose notes take about 2 kB each. */
function muchOf(results: number): readonly Draft[] {
  const note = 'x'.repeat(2000);
  const child = '0199c7f2-8e00-7000-8000-000000000001';
  const result: Draft = {
    kind: 'result',
    child,
    code: '3CFR-YRT7-FF2W-DU',
    day: '2026-03-09',
    tasks: [{ outcome: 'right' }],
    note,
  };
  return Array.from({ length: results }, () => result);
}

test('what was saved is there after a reload and after the browser was closed', async () => {
  const page = await tabOf('reload');
  const saved = given(await append(page, FERN, { kind: 'child', nickname: 'Wren' }));
  expect(saved.map(({ at }) => at > 1_700_000_000_000)).toEqual([true, true]);
  await page.reload();
  await ready(page);
  expect(given(await entriesOf(page))).toEqual(saved);
  await stores.relaunch();
  expect(given(await entriesOf(await tabOf('reload')))).toEqual(saved);
});

test('a draft that is not whole is refused with the rest of its batch, and nothing is written', async () => {
  const page = await tabOf('draft');
  const refused = await append(page, FERN, { kind: 'child', nickname: ' ' });
  expect(refusalsIn(refused).map(sentenceOf)).toEqual([
    'child › nickname: expected a nickname, got " ".',
  ]);
  expect(given(await countOf(page))).toBe(0);
});

test('two tabs that write at once lose nothing, and a third hears of it', async () => {
  const [one, other, silent] = [await tabOf('tabs'), await tabOf('tabs'), await tabOf('tabs')];
  const heard = silent.evaluate(
    () =>
      new Promise<number>((resolve) => {
        window.kept.store.onChange(async () => {
          const count = await window.kept.store.count();
          if (count.ok && count.value === 40) resolve(count.value);
        });
      }),
  );
  const writeMany = (page: Page, name: string) =>
    page.evaluate(async (nickname) => {
      for (let n = 0; n < 20; n++) await window.kept.store.append([{ kind: 'child', nickname }]);
    }, name);
  await Promise.all([writeMany(one, 'Fern'), writeMany(other, 'Wren')]);
  expect(await heard).toBe(40);
  const entries = given(await entriesOf(one));
  expect(new Set(entries.map(({ id }) => id)).size).toBe(40);
  expect(given(await entriesOf(other))).toEqual(entries);
});

test('a tab that is closed in the middle of a write leaves all of it or nothing', async () => {
  const page = await tabOf('closed');
  const saved = given(await append(page, FERN));
  const halfway = page.waitForEvent('console', (message) => message.text() === 'halfway');
  await page.evaluate((drafts) => {
    const { add } = IDBObjectStore.prototype;
    let added = 0;
    IDBObjectStore.prototype.add = function (...values) {
      added += 1;
      if (added === 300) {
        console.log('halfway');
        const until = performance.now() + 60_000;
        while (performance.now() < until);
      }
      return add.apply(this, values);
    };
    void window.kept.store.append(drafts);
  }, muchOf(600));
  await halfway;
  await page.close();
  const after = await tabOf('closed');
  expect(given(await entriesOf(after))).toEqual(saved);
  expect((await append(after, FERN)).ok).toBe(true);
});

test('where no room is left that is said, and what was saved before is still there', async () => {
  const page = await tabOf('full');
  const devtools = await page.context().newCDPSession(page);
  const { origin } = new URL(page.url());
  // Before the first write: the browser asks for the room that is left only now and then.
  await devtools.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 500_000 });
  const saved = given(await append(page, FERN));
  const refused = await append(page, ...muchOf(500));
  expect(refusalsIn(refused)).toEqual([{ code: 'storage', at: 'records', fault: 'full' }]);
  expect(given(await entriesOf(page))).toEqual(saved);
  await devtools.send('Storage.overrideQuotaForOrigin', { origin });
  expect(given(await append(page, ...muchOf(500)))).toHaveLength(500);
});

test('where storage is denied that is said, and nothing breaks', async () => {
  const page = await tabOf('denied', '/denied');
  const faults = [await append(page, FERN), await entriesOf(page)].map(refusalsIn);
  const denied = { code: 'storage', at: 'records', fault: 'denied' };
  expect(faults).toEqual([[denied], [denied]]);
  expect(await page.evaluate(() => window.kept.askToKeep())).toBe('unknown');
});

test('ids go on rising when the clock is set back, and the time is as the clock had it', async () => {
  const page = await tabOf('clock');
  const ids = await page.evaluate(async () => {
    const saved: Entry[] = [];
    for (const now of [2_000_000_000_000, 1_000_000_000_000, 1_000_000_000_000]) {
      const store = window.kept.open({ now: () => now });
      const added = await store.append([{ kind: 'child', nickname: 'Fern' }]);
      if (added.ok) saved.push(...added.value);
      store.close();
    }
    return saved.map(({ id, at }) => [id, at] as const);
  });
  expect(ids.map(([, at]) => at)).toEqual([2e12, 1e12, 1e12]);
  expect(ids.map(([id]) => id)).toEqual(ids.map(([id]) => id).sort());
  expect(new Set(ids.map(([id]) => id)).size).toBe(3);
});

test('a backup merged on another device gives the same entries, and merging it twice changes nothing', async () => {
  const [here, there] = [await tabOf('here'), await tabOf('there')];
  const saved = given(await append(here, FERN, ...muchOf(2)));
  const own = given(await append(there, { kind: 'child', nickname: 'Wren' }));
  const text = await here.evaluate(() => window.kept.backup());
  const restore = () => there.evaluate((text) => window.kept.restore(text), text);
  expect(await restore()).toBe(3);
  const once = await there.evaluate(() => window.kept.backup());
  expect(await restore()).toBe(0);
  expect(await there.evaluate(() => window.kept.backup())).toBe(once);
  expect(given(await entriesOf(there))).toEqual([...saved, ...own]);
});

test('a deleted child is gone for good, the others stay, and the browser says whether it keeps them', async () => {
  const page = await tabOf('deleted');
  const [fern, wren] = given(await append(page, FERN, { kind: 'child', nickname: 'Wren' }));
  const note: Draft = { kind: 'child', child: fern?.id ?? '', nickname: 'Fern B' };
  const plan: Draft = { kind: 'plan', child: fern?.id ?? '', day: '2026-03-10', sheets: [] };
  await append(page, note, plan, { kind: 'child', nickname: 'Moss', demo: true });
  const deleted = await page.evaluate((id) => window.kept.store.deleteChild(id), fern?.id ?? '');
  expect(given(deleted)).toBe(3);
  expect(given(await page.evaluate(() => window.kept.store.deleteDemo()))).toBe(1);
  expect(given(await entriesOf(page))).toEqual([wren]);
  expect(await page.evaluate(() => window.kept.keepingNow())).toMatch(/^(kept|may-go)$/);
});
