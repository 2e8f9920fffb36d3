// Parts of the app that cannot be fetched: it is said where they would be, all else goes on, and it can be tried again.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { drawn, startApp } from './app.ts';
import { faultsOf } from './faults.ts';

const app = startApp();

/** Lets nothing through whose address has that in it, as a server that has gone or holds another version by now. */
async function holdBack(page: Page, part: RegExp): Promise<void> {
  await page.route(part, (route) => route.abort());
}

test('a place that cannot be fetched says so; other places go on, and it is there once it can be', async () => {
  const page = await app.open('seed=7');
  await holdBack(page, /assets\/(record-screen|ground)/);
  await page.getByRole('link', { name: 'Record' }).click();
  await page.getByRole('alert').getByText('could not be fetched').waitFor();
  expect(await faultsOf(page)).toEqual([]);
  await page.getByRole('link', { name: 'Make' }).click();
  await drawn(page);
  await page.getByRole('link', { name: 'Record' }).click();
  await page.unroute(/assets\/(record-screen|ground)/);
  await page.getByRole('button', { name: 'Try again' }).click();
  await page.getByRole('button', { name: 'Add a child' }).waitFor();
});

test('without the worker that plans, what was asked for is told instead of being waited for', async () => {
  const page = await app.open('record', { waitFor: 'record' });
  await holdBack(page, /assets\/plan\.worker/);
  await page.getByRole('button', { name: 'Try with a demo group' }).click();
  await page.locator('.objection:visible, [role=alert]:visible').first().waitFor();
});

test('without the worker that makes sheets, the reason stands beside the empty table', async () => {
  const page = await app.blank();
  await holdBack(page, /assets\/make\.worker/);
  await page.goto(`${app.address()}#seed=7`);
  await page.locator('.desk .objection', { hasText: 'Something in the program itself' }).waitFor();
});
