// What the tests of changing a sheet have in common.
import type { Page } from 'playwright-core';
import type { App } from './app.ts';

/** The sheet of a recipe once its figures can be chosen. */
export async function sheetBeingChanged(
  app: App,
  recipe: string,
  options: Parameters<App['open']>[1] = {},
): Promise<Page> {
  const page = await app.open(recipe, options);
  await page.getByRole('button', { name: 'Change this page' }).click();
  await page.locator('.change-target').first().waitFor();
  return page;
}
