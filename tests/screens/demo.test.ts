// The invented group: put in view by one press, marked, apart from one's own records, and gone by one more.
import { expect, test } from 'vitest';
import { startApp } from './app.ts';
import { addChild } from './record-parts.ts';

const app = startApp();

test('a first visitor tries the demo group, sees that it is invented, and removes it for good', async () => {
  const page = await app.open('record', { waitFor: 'record' });
  await page.getByRole('button', { name: 'Try with a demo group' }).click();
  await page.getByText('These children are invented').waitFor();
  for (const name of ['Wren', 'Alder', 'Moss', 'Clover']) {
    expect(await page.getByText(name, { exact: true }).count()).toBeGreaterThan(0);
  }
  await page.reload();
  await page.getByText('These children are invented').waitFor();
  await page.getByRole('button', { name: 'Remove the demo group' }).click();
  await page.getByRole('button', { name: 'Delete for good' }).click();
  await page.getByText('The demo group is removed').waitFor();
  expect(await page.getByText('Wren', { exact: true }).count()).toBe(0);
  await page.reload();
  await page.getByRole('button', { name: 'Try with a demo group' }).waitFor();
});

test('one’s own children are not among the invented ones, and are there again afterwards', async () => {
  const page = await app.open('record', { waitFor: 'record' });
  await page.getByRole('button', { name: 'Try with a demo group' }).click();
  await page.getByText('These children are invented').waitFor();
  await page.getByRole('button', { name: 'Back to my own' }).click();
  await addChild(page, 'Robin');
  expect(await page.getByText('Wren', { exact: true }).count()).toBe(0);
  expect(await page.getByText('Robin', { exact: true }).count()).toBeGreaterThan(0);
});
