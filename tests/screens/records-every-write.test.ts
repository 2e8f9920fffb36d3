// Every write of the record store fails, or the tab or the whole browser dies at it: entries are as before or as after.
import fc from 'fast-check';
import type { Page } from 'playwright-core';
import { afterEach, describe, expect, test } from 'vitest';
import type { Result } from '../../src/base/index.ts';
import { ownPictureId } from '../../src/figures/index.ts';
import type { Entry } from '../../src/records/index.ts';
import { ownCopyOf } from '../own-pictures.ts';
import { childEntry, idAt, planEntry, resultEntry } from '../record-entries.ts';
import { testSeed } from '../seed.ts';
import { keptEntries } from './kept-entries.ts';
import { entriesOf, given, refusalsIn, startStores } from './stores.ts';

const stores = startStores();
const open = new Set<Page>();
afterEach(async () => {
  await Promise.all([...open].map((page) => page.close()));
  open.clear();
});

async function tabOf(origin: string): Promise<Page> {
  const page = await stores.tabOf(origin);
  open.add(page);
  return page;
}

/** A time that the entries of the test are before and the clock is after, in ms since 1970. */
const OF_TODAY = 1_700_000_000_000;

const CAT = ownCopyOf('picture-cat');

/** What is there before each change: two children, a group of invented ones, a picture under two names. */
const KEPT: readonly Entry[] = [
  childEntry(1, 1, { nickname: 'Fern' }),
  childEntry(2, 2, { nickname: 'Wren' }),
  resultEntry(3, 1),
  planEntry(4, 1),
  resultEntry(5, 2),
  childEntry(6, 6, { nickname: 'Moss', demo: true }),
  resultEntry(7, 6, { demo: true }),
  { id: idAt(8), at: 8, kind: 'picture', ...CAT },
  { id: idAt(9), at: 9, kind: 'picture', ...CAT, name: 'Tom' },
];

/** A backup with two entries that are new and one that says something else under an id that is there. */
const COMING: readonly Entry[] = [
  resultEntry(3, 1, { note: 'held the pen well' }),
  childEntry(20, 20, { nickname: 'Otto' }),
  resultEntry(21, 20),
];

/** What each change of the store does in the page; answers its refusals. */
const CHANGES = {
  append: () =>
    window.kept.store.append([
      { kind: 'child', nickname: 'Otto' },
      { kind: 'child', nickname: 'Ivy' },
      { kind: 'child', nickname: 'Ash' },
    ]),
  merge: ({ coming }: Given) => window.kept.store.merge(coming),
  deleteChild: ({ child }: Given) => window.kept.store.deleteChild(child),
  deletePicture: ({ picture }: Given) => window.kept.store.deletePicture(picture),
  deleteDemo: () => window.kept.store.deleteDemo(),
  migrate: async () => {
    window.kept.store.close();
    const store = window.kept.open({ steps: window.kept.nextSteps });
    const read = await store.read();
    store.close();
    return read;
  },
} as const;
type Change = keyof typeof CHANGES;

interface Given {
  readonly coming: readonly Entry[];
  readonly child: string;
  readonly picture: string;
}

const GIVEN: Given = { coming: COMING, child: idAt(1), picture: ownPictureId(CAT) };

/** `full`: the browser finds no room; `ends`: it gives up the transaction; `hangs`: the tab goes no further. */
type How = 'full' | 'ends' | 'hangs' | 'none';

/** Lets the k-th write of this tab meet a fault, and counts the writes. */
async function plant(page: Page, how: How, at: number): Promise<void> {
  await page.evaluate(
    ([how, at]) => {
      const store = IDBObjectStore.prototype;
      const real = { add: store.add, put: store.put, delete: store.delete };
      let writes = 0;
      const meet = (target: IDBObjectStore) => {
        writes += 1;
        Object.assign(window, { writes });
        if (writes !== at) return;
        if (how === 'full') throw new DOMException('no room', 'QuotaExceededError');
        if (how === 'ends') target.transaction.abort();
        if (how !== 'hangs') return;
        console.log('halfway');
        for (;;);
      };
      store.add = function (...values) {
        meet(this);
        return real.add.apply(this, values);
      };
      store.put = function (...values) {
        meet(this);
        return real.put.apply(this, values);
      };
      store.delete = function (...values) {
        meet(this);
        return real.delete.apply(this, values);
      };
    },
    [how, at] as const,
  );
}

async function tabWithKept(origin: string): Promise<Page> {
  const page = await tabOf(origin);
  given(await page.evaluate((kept) => window.kept.store.merge(kept), KEPT));
  return page;
}

function changeIn(page: Page, change: Change): Promise<Result<unknown>> {
  const work: (given: Given) => Promise<Result<unknown>> = CHANGES[change];
  return page.evaluate(work, GIVEN);
}

/** What a reader of today's or the next form finds; ids and times of new entries differ from run to run. */
async function foundIn(page: Page, change: Change): Promise<readonly unknown[]> {
  const entries = change === 'migrate' ? await keptEntries(page) : given(await entriesOf(page));
  return entries.map(({ id, at, ...rest }) =>
    at < OF_TODAY ? { id, at, ...rest } : { ...rest, id: 'new', at: 0, child: 'new' },
  );
}

interface Whole {
  readonly writes: number;
  readonly after: readonly unknown[];
}

/** The change without any fault, in an origin of its own. */
async function wholeOf(change: Change, origin: string): Promise<Whole> {
  const page = await tabWithKept(origin);
  await plant(page, 'none', 0);
  given(await changeIn(page, change));
  const writes = await page.evaluate(() => (window as unknown as { writes: number }).writes);
  return { writes, after: await foundIn(page, change) };
}

const NAMES = Object.keys(CHANGES) as readonly Change[];

describe.each(NAMES)('%s', (change) => {
  test('is all there or not at all, whichever of its writes fails or never comes', async () => {
    const { writes, after } = await wholeOf(change, `${change}-whole`.toLowerCase());
    expect(writes).toBeGreaterThan(1);
    for (let at = 1; at <= writes; at++) {
      const origin = `${change}-${at}`.toLowerCase();
      const page = await tabWithKept(origin);
      const before = await foundIn(page, change);
      for (const how of ['full', 'ends'] as const) {
        const faulty = await tabOf(origin);
        await plant(faulty, how, at);
        const fault = how === 'full' && change !== 'migrate' ? 'full' : 'failed';
        const told = refusalsIn(await changeIn(faulty, change));
        expect(told, `${how} at ${at}`).toEqual([{ code: 'storage', at: 'records', fault }]);
        expect(await foundIn(page, change), `${how} at ${at}`).toEqual(before);
        await faulty.close();
      }
      const dying = await tabOf(origin);
      await plant(dying, 'hangs', at);
      const halfway = dying.waitForEvent('console', (message) => message.text() === 'halfway');
      changeIn(dying, change).catch(() => {});
      await halfway;
      await dying.close();
      // The next one waits until the dead tab's transaction is given up.
      expect(await foundIn(page, change), `closed at ${at}`).toEqual(before);
      given(await changeIn(page, change));
      expect(await foundIn(page, change)).toEqual(after);
      await page.close();
    }
  });
});

test('a browser that is killed at any write, or right after it was told to write, keeps all or nothing', async () => {
  const { writes, after } = await wholeOf('append', 'killed-whole');
  for (let at = 1; at <= writes + 1; at++) {
    const origin = `killed-${at}`;
    const page = await tabWithKept(origin);
    const before = await foundIn(page, 'append');
    await plant(page, 'hangs', at);
    const halfway = page.waitForEvent('console', (message) => message.text() === 'halfway');
    const changing = changeIn(page, 'append');
    changing.catch(() => {});
    await (at <= writes ? halfway : page.evaluate(() => 0));
    halfway.catch(() => {});
    open.clear();
    await stores.kill();
    const next = await tabOf(origin);
    const found = await foundIn(next, 'append');
    expect(at <= writes ? [before] : [before, after]).toContainEqual(found);
    given(await changeIn(next, 'append'));
    expect(await foundIn(next, 'append')).toHaveLength(found.length + 3);
  }
});

test('two tabs whose clocks jump forth and back lose nothing, and what was written later has the later id', async () => {
  const jumps = fc.array(
    fc.record({
      tab: fc.nat({ max: 1 }),
      now: fc.constantFrom(-1e12, 0, 1e12, 2e12, 2e12 + 1, 2 ** 44 - 1, 2 ** 48, 8.64e15),
    }),
    { minLength: 2, maxLength: 12 },
  );
  let run = 0;
  await fc.assert(
    fc.asyncProperty(jumps, async (jumps) => {
      const origin = `jumps-${++run}`;
      const tabs = [await tabOf(origin), await tabOf(origin)];
      const ids: string[] = [];
      for (const { tab, now } of jumps) {
        const added = await tabs[tab]?.evaluate(async (now) => {
          const store = window.kept.open({ now: () => now });
          const added = await store.append([
            { kind: 'child', nickname: 'Fern' },
            { kind: 'child', nickname: 'Wren' },
          ]);
          store.close();
          return added;
        }, now);
        if (added) ids.push(...given(added).map(({ id }) => id));
      }
      const [one, other] = tabs;
      if (!one || !other) throw new Error('two tabs');
      const kept = given(await entriesOf(one)).map(({ id }) => id);
      expect(ids).toEqual([...ids].sort());
      expect(kept).toEqual(ids);
      expect(given(await entriesOf(other)).map(({ id }) => id)).toEqual(ids);
      await Promise.all(tabs.map((tab) => tab.close()));
    }),
    { seed: testSeed('clocks that jump'), numRuns: 12 },
  );
});

test('two tabs that write at once, one of them failing at each of its writes, lose nothing of the other', async () => {
  for (let at = 1; at <= 3; at++) {
    const origin = `both-${at}`;
    const [sound, faulty] = [await tabWithKept(origin), await tabOf(origin)];
    await plant(faulty, 'full', at);
    const [added, refused] = await Promise.all([
      changeIn(sound, 'append'),
      changeIn(faulty, 'append'),
    ]);
    expect(added.ok).toBe(true);
    expect(refusalsIn(refused)).toEqual([{ code: 'storage', at: 'records', fault: 'full' }]);
    expect(given(await entriesOf(sound))).toHaveLength(KEPT.length + 3);
  }
});
