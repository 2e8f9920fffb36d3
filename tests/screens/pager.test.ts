// Turning through a pack on Make.
import { expect, test } from 'vitest';
import { startApp } from './app.ts';

const app = startApp();

test('each of several fast presses turns a sheet, also before the next one lies there', async () => {
  const page = await app.open('seed=7&sheets=10');
  const next = page.getByRole('button', { name: 'Next sheet' });
  await next.evaluate((button) => {
    for (let press = 0; press < 4; press++) (button as HTMLElement).click();
  });
  await page.getByText('sheet 5 of 10').waitFor();
  await page.getByRole('button', { name: 'Sheet before' }).evaluate((button) => {
    for (let press = 0; press < 9; press++) (button as HTMLElement).click();
  });
  await page.getByText('sheet 1 of 10').waitFor();
  expect(await next.isEnabled()).toBe(true);
});
