// The record store from version to version: nothing is lost, and what cannot be is told plainly.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Entry } from '../../src/records/index.ts';
import { sentenceOf } from '../../src/words/index.ts';
import { append, entriesOf, FERN, given, refusalsIn, startStores } from './stores.ts';

const VERSION_1 = new URL('../stored/records-version-1.json', import.meta.url);
const { tabOf } = startStores();

test('entries come to a later version all at once; a tab in the way, a fault and a later version are told', async () => {
  const [page, older] = [await tabOf('versions'), await tabOf('versions')];
  const saved = given(await append(page, FERN));
  await page.evaluate(() => window.kept.store.close());
  const newer = await tabOf('versions');
  const broken = await newer.evaluate(() => {
    const { open, brokenSteps } = window.kept;
    return open({ steps: brokenSteps }).read();
  });
  expect(refusalsIn(broken)).toEqual([{ code: 'storage', at: 'records', fault: 'failed' }]);
  // A tab that does not let go of today’s version.
  await older.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const request = indexedDB.open('samewise-records');
        request.onsuccess = () => {
          Object.assign(window, { held: request.result });
          resolve();
        };
      }),
  );
  const readAsNewer = () =>
    newer.evaluate(async () => {
      const store = window.kept.open({ steps: window.kept.nextSteps });
      const first = await store.read();
      return [first, await store.read()];
    });
  const blocked = { code: 'storage', at: 'records', fault: 'blocked' };
  expect((await readAsNewer()).map(refusalsIn)).toEqual([[blocked], [blocked]]);
  await older.close();
  const [child] = given((await readAsNewer())[1] ?? (await entriesOf(newer)));
  expect(child).toEqual({ ...saved[0], nickname: 'Fern of old' });
  expect(refusalsIn(await entriesOf(await tabOf('versions'))).map(sentenceOf)).toEqual([
    'records: made by version 5; this program reads versions 1, 2, 3, 4. Get a newer Samewise to read it.',
  ]);
  expect(given((await readAsNewer())[1] ?? (await entriesOf(newer)))).toHaveLength(1);
});

test('a database of version 1 opens with all that it holds, takes plans, and is refused to a program of version 1', async () => {
  const page = await tabOf('version-1');
  const { entries: old } = JSON.parse(readFileSync(VERSION_1, 'utf8')) as {
    readonly entries: readonly Entry[];
  };
  await page.evaluate(
    (entries) =>
      new Promise<void>((resolve) => {
        const request = indexedDB.open('samewise-records', 1);
        request.onupgradeneeded = () => {
          const kept = request.result.createObjectStore('entries', { keyPath: 'id' });
          for (const entry of entries) kept.add(entry);
        };
        request.onsuccess = () => {
          request.result.close();
          resolve();
        };
      }),
    old,
  );
  expect(given(await entriesOf(page))).toEqual(old);
  const [plan] = given(
    await append(page, {
      kind: 'plan',
      child: old[0]?.id ?? '',
      day: '2026-03-10',
      sheets: [{ code: '3CFR-YRT7-FF2W-DU', why: 'asked' }],
    }),
  );
  expect(given(await entriesOf(page))).toEqual([...old, plan]);
  const readAsVersion1 = () => page.evaluate(() => window.kept.open({ steps: [] }).read());
  expect(refusalsIn(await readAsVersion1()).map(sentenceOf)).toEqual([
    'records: made by version 4; this program reads version 1. Get a newer Samewise to read it.',
  ]);
  expect(given(await entriesOf(page))).toEqual([...old, plan]);
});
