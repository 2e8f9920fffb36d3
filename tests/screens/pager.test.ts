// Turning through a pack on Make.
import type { Locator } from 'playwright-core';
import { expect, test } from 'vitest';
import { startApp } from './app.ts';

const app = startApp();

test('each of several fast presses turns a sheet, also before the next one lies there', async () => {
  const page = await app.open('seed=7&sheets=10');
  const next = page.getByRole('button', { name: 'Next sheet' });
  await pressFast(next, 4);
  await page.getByText('sheet 5 of 10').waitFor();
  await pressFast(page.getByRole('button', { name: 'Sheet before' }), 9);
  await page.getByText('sheet 1 of 10').waitFor();
  expect(await next.isEnabled()).toBe(true);
});

/** One press after the other, none waiting for what the one before brings. */
function pressFast(button: Locator, times: number): Promise<void> {
  return button.evaluate(async (element, times) => {
    for (let press = 0; press < times; press++) {
      if (element instanceof HTMLElement) element.click();
      await new Promise((after) => setTimeout(after));
    }
  }, times);
}
