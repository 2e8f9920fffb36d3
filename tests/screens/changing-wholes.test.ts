// Places where nothing stands, and boxes that are chosen as one.
import { expect, test } from 'vitest';
import { PHONE, startApp } from './app.ts';
import { sheetBeingChanged } from './changing-parts.ts';

const app = startApp();

test('where nothing stands something can be put, and taken away again', async () => {
  const page = await sheetBeingChanged(app, 'activity=copy-pattern&step=2&seed=5&sheets=1');
  await page.getByRole('button', { name: 'Places where nothing stands' }).click();
  const standing = await page.locator('.sheet [data-place]').count();
  await page.locator('.change-empty .chip').first().click();
  await page
    .getByRole('button', { name: /^Put here/ })
    .first()
    .click();
  await page.waitForFunction(
    (was) => document.querySelectorAll('.sheet [data-place]').length > was,
    standing,
  );
  await page.keyboard.press('Control+z');
  await page.waitForFunction(
    (was) => document.querySelectorAll('.sheet [data-place]').length === was,
    standing,
  );
});

test('a box is chosen as one, by mouse and by keyboard: added, locked, swapped; an empty cell is filled where it lies', async () => {
  const page = await sheetBeingChanged(app, 'activity=in-every-box&step=6&seed=5&sheets=2');
  const names = () =>
    page.locator('.change-target').evaluateAll((all) => all.map((each) => each.ariaLabel ?? ''));
  const before = await names();
  const first = page.getByRole('button', { name: 'Task 1, box 1', exact: true });
  await first.focus();
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Swap with another' }).click();
  await page.getByText('Choose what to swap with: box 1').waitFor();
  await page.getByRole('button', { name: 'Task 1, box 2', exact: true }).press('Enter');
  await page.waitForURL(/changed=1:/);
  const kindOf = (label = '') => label.replace(/^.*: /, '').replace(/, (locked|look here)/g, '');
  await page.waitForFunction(
    (was) => document.querySelector('.change-target')?.ariaLabel?.includes(was),
    kindOf(before.find((name) => name.startsWith('Task 1, box 2, figure 1'))),
  );
  await first.press('Enter');
  await page.getByRole('button', { name: 'Lock all of it' }).click();
  await page.getByRole('button', { name: 'Task 1, box 1, locked' }).waitFor();
  const boxes = await page.locator('.whole-target').count();
  await page.getByRole('button', { name: 'Task 1, box 2', exact: true }).press('Enter');
  await page.getByRole('button', { name: 'Add another box' }).click();
  await page.waitForFunction(
    (was) => document.querySelectorAll('.whole-target').length === was + 1,
    boxes,
  );
  const grid = await sheetBeingChanged(app, 'activity=one-of-each&step=2&seed=5&sheets=1', {
    viewport: PHONE,
  });
  const empty = grid.getByRole('button', { name: /^Task 1, row \d, place \d$/ }).first();
  const box = await empty.boundingBox();
  expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(24);
  const standing = await grid.locator('.sheet [data-place]').count();
  await empty.click();
  await grid
    .getByRole('button', { name: /^Put here/ })
    .first()
    .click();
  await grid.waitForFunction(
    (was) => document.querySelectorAll('.sheet [data-place]').length > was,
    standing,
  );
});
