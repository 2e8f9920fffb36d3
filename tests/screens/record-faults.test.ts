// What may go wrong while a sheet is being recorded: nothing is lost by half, and every fault is told.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { planEntry, resultEntry } from '../record-entries.ts';
import { startApp } from './app.ts';
import { keptEntries, putEntries } from './kept-entries.ts';
import {
  addChild,
  codeOfElsewhere,
  dayFromToday,
  entriesOf,
  keptResults,
  outcomeChip,
  recordAll,
  writeCode,
} from './record-parts.ts';

const app = startApp();
const CODE = codeOfElsewhere();

async function openRecord(): Promise<Page> {
  const page = await app.open('record', { waitFor: 'record' });
  await addChild(page, 'Fern');
  return page;
}

async function otherTab(page: Page): Promise<Page> {
  const other = await page.context().newPage();
  await other.goto(`${app.address()}#record`);
  await other.getByRole('radio', { name: 'Fern' }).waitFor();
  return other;
}

/** Puts entries of other children into the database until not even a short one finds room. */
async function fillUp(page: Page): Promise<void> {
  await page.evaluate(
    (entry) =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open('samewise-records');
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const sizes = [2000, 200, 1];
          let count = 0;
          const put = () => {
            const [size] = sizes;
            if (size === undefined) {
              request.result.close();
              return resolve();
            }
            const transaction = request.result.transaction('entries', 'readwrite');
            const id = `${entry.id.slice(0, -6)}${String(++count).padStart(6, '0')}`;
            transaction.objectStore('entries').put({ ...entry, id, note: 'x'.repeat(size) });
            transaction.oncomplete = put;
            transaction.onabort = () => {
              sizes.shift();
              put();
            };
          };
          put();
        };
      }),
    resultEntry(1, 1),
  );
}

test('a tab that is closed right after Save has saved the whole record or nothing', async () => {
  const page = await openRecord();
  await writeCode(page, CODE);
  await page.getByRole('radio', { name: 'All with help' }).click();
  await page.getByRole('button', { name: 'Save the record' }).click({ noWaitAfter: true });
  const other = await page.context().newPage();
  await page.close();
  await other.goto(`${app.address()}#record`);
  await other.getByRole('radio', { name: 'Fern' }).waitFor();
  const kept = await keptResults(other);
  expect(kept.length).toBeLessThanOrEqual(1);
  for (const { code, tasks } of kept) {
    expect([code, tasks.map(({ outcome }) => outcome)]).toEqual([
      CODE,
      ['with-help', 'with-help', 'with-help'],
    ]);
  }
  await recordAll(other, codeOfElsewhere(21), 'All right');
  expect(await keptResults(other)).toHaveLength(kept.length + 1);
});

test('two tabs that record one sheet keep both records, and each says so', async () => {
  const page = await openRecord();
  const other = await otherTab(page);
  await writeCode(page, CODE);
  await writeCode(other, CODE);
  await page.getByRole('radio', { name: 'All right' }).click();
  await other.getByRole('radio', { name: 'Not yet', exact: true }).click();
  await Promise.all(
    [page, other].map((tab) => tab.getByRole('button', { name: 'Save the record' }).click()),
  );
  for (const tab of [page, other]) {
    await tab.getByText(/^Saved for Fern/).waitFor();
    await entriesOf(tab).nth(1).waitFor();
    const twice = entriesOf(tab).filter({ hasText: 'another record of the same day' });
    expect(await twice.count()).toBe(2);
  }
});

test('Save pressed twice at once records the sheet once', async () => {
  const page = await openRecord();
  await writeCode(page, CODE);
  await page.getByRole('radio', { name: 'All right' }).click();
  await page.getByRole('button', { name: 'Save the record' }).dblclick();
  await page.getByText(/^Saved for Fern/).waitFor();
  expect(await keptResults(page)).toHaveLength(1);
});

test('with the clock set back a record is saved, after the one before it', async () => {
  const page = await app.open('record', { waitFor: 'record' });
  await page.clock.install({ time: new Date('2026-11-20T12:00:00') });
  await page.reload();
  await addChild(page, 'Fern');
  await recordAll(page, CODE, 'All right');
  await page.clock.setSystemTime(new Date('2026-11-20T09:00:00'));
  await recordAll(page, codeOfElsewhere(21), 'Not yet');
  const [first, second] = await keptResults(page);
  expect([first?.code, second?.code]).toEqual([CODE, codeOfElsewhere(21)]);
  expect((first?.at ?? 0) > (second?.at ?? 0)).toBe(true);
  expect(await entriesOf(page).first().textContent()).toContain('3 not yet');
});

test('with no room left that is said, what was tapped stays, and with room again it is saved', async () => {
  const page = await app.open('seed=7');
  const devtools = await page.context().newCDPSession(page);
  const { origin } = new URL(page.url());
  // Before the first write: the browser asks for the room that is left only now and then.
  await devtools.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 300_000 });
  await page.getByRole('link', { name: 'Record' }).click();
  await addChild(page, 'Fern');
  await writeCode(page, CODE);
  await outcomeChip(page, 1, 'not yet').click();
  await fillUp(page);
  await page.getByRole('button', { name: 'Save the record' }).click();
  await page.getByRole('alert').getByText('no room').waitFor();
  expect(await outcomeChip(page, 1, 'not yet').isChecked()).toBe(true);
  expect((await keptResults(page)).filter(({ code }) => code === CODE)).toEqual([]);
  await devtools.send('Storage.overrideQuotaForOrigin', { origin });
  await page.getByRole('button', { name: 'Save the record' }).click();
  await page.getByText(/^Saved for Fern/).waitFor();
});

test('a planned sheet whose code cannot be read says why once it is picked', async () => {
  const page = await openRecord();
  const [fern] = await keptEntries(page);
  const plan = planEntry(1, 1, {
    day: dayFromToday(0),
    sheets: [{ code: '2222-2222-22', why: 'nearest' }],
  });
  await putEntries(page, [{ ...plan, child: fern?.kind === 'child' ? fern.child : '' }]);
  await page.reload();
  await page.getByRole('radio', { name: 'Sheet 2222-2222-22' }).click();
  await page.locator('.code-entry .objection').waitFor();
  expect(await page.getByRole('button', { name: 'Save the record' }).count()).toBe(0);
});
