// What the screens about children stand on: the child that is remembered, and two shelves that never meet.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { Entry } from '../../src/records/index.ts';
import { childEntry, resultEntry } from '../record-entries.ts';
import { DESKTOP, drawn, PHONE, startApp } from './app.ts';
import { faultsOf, WCAG } from './faults.ts';
import { keptEntries, putEntries } from './kept-entries.ts';
import { addChild, codeOfElsewhere, entriesOf, recordAll } from './record-parts.ts';

const app = startApp();

/** An invented child, with more recorded of it than of any real one. */
const DEMO: readonly Entry[] = [
  childEntry(1, 1, { nickname: 'Moss', demo: true }),
  resultEntry(2, 1, { code: codeOfElsewhere(), note: 'Invented.', demo: true }),
];
const isChosen = (page: Page, nickname: string) =>
  page.getByRole('radio', { name: nickname }).isChecked();

/** The Record screen with the real child Fern, and the invented group in view. */
async function openDemo(options: Parameters<typeof app.open>[1] = {}): Promise<Page> {
  const page = await app.open('record', { ...options, waitFor: 'record' });
  await addChild(page, 'Fern');
  await putEntries(page, DEMO);
  await page.evaluate(() => localStorage.setItem('samewise.shelf', 'demo'));
  await page.reload();
  await page.getByRole('radio', { name: 'Moss' }).waitFor();
  return page;
}

test('the chosen child stays chosen over a reload and a visit to another place', async () => {
  const page = await app.open('record', { waitFor: 'record' });
  await addChild(page, 'Fern');
  await addChild(page, 'Wren');
  await recordAll(page, codeOfElsewhere(), 'All right');
  await page.getByRole('radio', { name: 'Fern' }).click();
  await page.reload();
  await page.getByRole('radio', { name: 'Fern' }).waitFor();
  expect(await isChosen(page, 'Fern')).toBe(true);
  await page.getByRole('link', { name: 'Make' }).click();
  await drawn(page);
  await page.getByRole('link', { name: 'Record' }).click();
  await page.getByRole('radio', { name: 'Fern' }).waitFor();
  expect(await isChosen(page, 'Fern')).toBe(true);
});

test('without a remembered child it is the one of the latest record', async () => {
  const page = await app.open('record', { waitFor: 'record' });
  await addChild(page, 'Fern');
  await recordAll(page, codeOfElsewhere(), 'All right');
  await addChild(page, 'Wren');
  await page.evaluate(() => localStorage.clear());
  await page.reload();
  await page.getByRole('radio', { name: 'Fern' }).waitFor();
  expect(await isChosen(page, 'Fern')).toBe(true);
});

test('nothing is remembered of a child that was deleted', async () => {
  const page = await app.open('record', { waitFor: 'record' });
  await addChild(page, 'Fern');
  expect(await page.evaluate(() => localStorage.length)).toBe(1);
  await page.getByRole('button', { name: 'Delete Fern' }).click();
  await page.getByRole('button', { name: 'Delete for good' }).click();
  await page.getByText('No child yet.').waitFor();
  expect(await page.evaluate(() => localStorage.length)).toBe(0);
});

test('a browser that refuses to remember just forgets', async () => {
  const page = await app.open('record', { waitFor: 'record' });
  await page.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', {
      get: () => {
        throw new DOMException('nothing is remembered here', 'SecurityError');
      },
    });
  });
  await page.reload();
  await addChild(page, 'Fern');
  await addChild(page, 'Wren');
  await page.getByRole('radio', { name: 'Fern' }).click();
  expect(await isChosen(page, 'Fern')).toBe(true);
  await page.reload();
  await page.getByRole('radio', { name: 'Fern' }).waitFor();
});

test('invented children are said to be so, and what is done with them stays with them', async () => {
  const page = await openDemo();
  await page.getByText('These children are invented').waitFor();
  expect(await page.getByRole('radio', { name: 'Fern' }).count()).toBe(0);
  for (const name of ['Add a child', 'Back up to a file', 'Restore from a file']) {
    expect(await page.getByRole('button', { name }).count(), name).toBe(0);
  }
  await recordAll(page, codeOfElsewhere(21), 'Not yet');
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await page.getByText('Taken back.').waitFor();
  const added = (await keptEntries(page)).slice(-2);
  expect(added.map(({ kind, demo }) => [kind, demo])).toEqual([
    ['result', true],
    ['undone', true],
  ]);
});

test('back at the own children nothing of the invented ones is left on the screen', async () => {
  const page = await openDemo();
  await recordAll(page, codeOfElsewhere(21), 'Not yet');
  await page.getByRole('button', { name: 'Back to my own' }).click();
  await page.getByRole('radio', { name: 'Fern' }).waitFor();
  await page.getByText('Back at your own children.').waitFor();
  expect(await page.locator('.message:focus').textContent()).toBe('Back at your own children.');
  expect(await page.locator('body').textContent()).not.toContain('Moss');
  expect(await entriesOf(page).count()).toBe(0);
  await page.reload();
  await page.getByRole('radio', { name: 'Fern' }).waitFor();
  expect(await page.getByText('These children are invented').count()).toBe(0);
});

test('the invented group is deleted for good after a question, and nothing else is', async () => {
  const page = await openDemo();
  const real = (await keptEntries(page)).filter(({ demo }) => demo !== true);
  await page.getByRole('button', { name: 'Remove the demo group' }).click();
  await page.getByText('Your own records stay as they are.').waitFor();
  await page.getByRole('button', { name: 'Delete for good' }).click();
  await page.getByText('The demo group is removed.').waitFor();
  await page.getByRole('radio', { name: 'Fern' }).waitFor();
  expect(await keptEntries(page)).toEqual(real);
  expect(await page.evaluate(() => Object.keys(localStorage))).toEqual(['samewise.child.real']);
  await page.waitForFunction(() => document.activeElement?.className === 'message');
});

test('while invented children are in view Make is as it always is', async () => {
  const page = await openDemo();
  await page.getByRole('link', { name: 'Make' }).click();
  await drawn(page);
  expect(await page.getByText('These children are invented').count()).toBe(0);
  await page.getByRole('link', { name: 'Record' }).click();
  await page.getByText('These children are invented').waitFor();
});

test('a remembered shelf that has been emptied elsewhere is not in view', async () => {
  const page = await openDemo();
  await page.evaluate(
    (ids) => {
      const request = indexedDB.open('samewise-records');
      request.onsuccess = () => {
        const store = request.result.transaction('entries', 'readwrite').objectStore('entries');
        for (const id of ids) store.delete(id);
      };
    },
    DEMO.map(({ id }) => id),
  );
  await page.reload();
  await page.getByRole('radio', { name: 'Fern' }).waitFor();
  expect(await page.getByText('These children are invented').count()).toBe(0);
});

test.each([
  ['light', DESKTOP],
  ['dark', PHONE],
] as const)(
  'in %s surroundings at %o the demo banner has no fault and fits',
  async (colorScheme, viewport) => {
    const page = await openDemo({ colorScheme, viewport });
    expect(await faultsOf(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(viewport.width);
    await page.getByRole('button', { name: 'Remove the demo group' }).click();
    await page.getByRole('alertdialog').waitFor();
    expect(await faultsOf(page, WCAG)).toEqual([]);
  },
);
