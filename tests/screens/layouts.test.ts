// Papers and ways to lay out the page: chosen in the recipe, kept in the address and in the code.
import { expect, test } from 'vitest';
import { readCode } from '../../src/sheets/index.ts';
import { codeOf, drawn, drawnAnew, startApp } from './app.ts';

const app = startApp();
const RECIPE = 'activity=by-key&step=2&seed=7&sheets=1';

test('each layout is chosen in words, redraws the page, and is read from the code of the sheet', async () => {
  const page = await app.open(RECIPE);
  await page.getByRole('button', { name: 'More choices' }).click();
  let before = await drawn(page);
  for (const [label, choice] of [
    ['Tasks are drawn', 'large'],
    ['Margin', 'for a wipe-clean pocket'],
  ] as const) {
    await page.getByRole('button', { name: new RegExp(label) }).click();
    await page.getByRole('option', { name: choice }).click();
    before = await drawnAnew(page, before);
  }
  const read = readCode(await codeOf(page));
  expect(read.ok && read.value).toMatchObject({ size: 'large', page: { margin: 'pocket' } });
  expect(page.url()).toContain('size=large&margin=pocket');
});

test('the left hand and saved ink are kept by a reload', async () => {
  const page = await app.open(`${RECIPE}&hand=left&ink=saving`);
  const before = await drawn(page);
  await page.reload();
  expect(await drawn(page)).toBe(before);
  const read = readCode(await codeOf(page));
  expect(read.ok && read.value).toMatchObject({ hand: 'left', ink: 'saving' });
});

test('how much of the page is inked is told beside the choice, and follows the page', async () => {
  const page = await app.open(RECIPE);
  await page.getByRole('button', { name: 'More choices' }).click();
  const share = page.getByText(/of this page is inked/);
  const before = await share.textContent();
  const tasks = page.getByRole('textbox', { name: 'Tasks on a sheet' });
  await tasks.fill('2');
  await tasks.press('Enter');
  await expect.poll(() => share.textContent(), { timeout: 20_000 }).not.toBe(before);
});

test('A5 lies sideways at first', async () => {
  const page = await app.open(RECIPE);
  const before = await drawn(page);
  await page.getByRole('button', { name: /Paper/ }).first().click();
  await page.getByRole('option', { name: /A5/ }).click();
  await drawnAnew(page, before);
  expect(await page.locator('.sheet svg').getAttribute('viewBox')).toBe('0 0 210 148');
});

test('large print takes larger stickers; where none are sold it is refused, and says what to do', async () => {
  const recipe = 'activity=copy-pattern&step=2&seed=7&size=large';
  const page = await app.open(`${recipe}&with.response=sticker`);
  await page.getByRole('button', { name: 'More choices' }).click();
  await page.getByText('Stickers are larger, too').waitFor();
  const largest = await app.open(`${recipe}&with.response=sticker&with.stickerMm=25`, {
    waitFor: 'objection',
  });
  await largest
    .getByText(/no larger stickers are sold. Choose smaller stickers/)
    .first()
    .waitFor();
});

test('all pages of the adult’s are turned one by one', async () => {
  const page = await app.open(
    'activity=by-key&step=2&seed=7&sheets=10&goals=common-core,eyfs,head-start,ncf-fs,te-whariki&orientation=landscape',
  );
  const sheet = await drawn(page);
  await page.getByRole('radio', { name: 'Adult’s page' }).click();
  const first = await drawnAnew(page, sheet);
  const place = page.getByText(/^page \d of \d, for the whole pack$/);
  await place.waitFor();
  const pages = Number(/of (\d)/.exec((await place.textContent()) ?? '')?.[1]);
  expect(pages).toBeGreaterThan(1);
  let before = first;
  for (let turned = 1; turned < pages; turned++) {
    await page.getByRole('button', { name: 'Next page' }).click();
    before = await drawnAnew(page, before);
  }
  await page.getByText(`page ${pages} of ${pages}, for the whole pack`).waitFor();
  expect(await page.getByRole('button', { name: 'Next page' }).isDisabled()).toBe(true);
});
