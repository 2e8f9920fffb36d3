// What cannot be made is told beside what was entered, and nothing is lost.
import { expect, test } from 'vitest';
import { choiceOf, drawn, drawnAnew, labelOf, startApp } from './app.ts';

const app = startApp();

test('a number out of range stays, its range stands beside it, and the page stays', async () => {
  const page = await app.open('seed=7');
  const before = await drawn(page);
  const tasks = page.getByRole('textbox', { name: 'Tasks on a sheet' });
  await tasks.fill('99');
  await tasks.press('Enter');
  const objection = page.locator('.objection', { hasText: '99' });
  await objection.waitFor();
  expect(await objection.textContent()).toContain('expected 1 to 12');
  expect(await tasks.inputValue()).toBe('99');
  expect(await tasks.getAttribute('aria-invalid')).toBe('true');
  expect(await tasks.getAttribute('aria-describedby')).toBeTruthy();
  expect(await drawn(page)).toBe(before);
  await page.getByText('The page shows the last recipe that could be made.').waitFor();
  expect(await page.getByRole('button', { name: 'Get the PDF' }).isDisabled()).toBe(true);
});

test('a refused number is mended in place', async () => {
  const page = await app.open('seed=7&tasks=99&step=3', { waitFor: 'objection' });
  const tasks = page.getByRole('textbox', { name: 'Tasks on a sheet' });
  await tasks.fill('1');
  await tasks.press('Enter');
  await expect.poll(() => page.locator('.objection:visible').count()).toBe(0);
  await drawn(page);
});

test('a choice that cannot go together with another is told beside it', async () => {
  const page = await app.open('seed=7&with.content=shapes');
  const before = await drawn(page);
  await choiceOf(page, labelOf('response')).click();
  await page.getByRole('option', { name: 'puts a sticker' }).click();
  await page
    .locator('.objection', { hasText: 'a dot sticker can match nothing but a colour' })
    .waitFor();
  expect(await choiceOf(page, labelOf('response')).textContent()).toBe('puts a sticker');
  await choiceOf(page, labelOf('content')).click();
  await page.getByRole('option', { name: 'colours', exact: true }).click();
  await drawnAnew(page, before);
});

test('an address with nonsense in it is told and can be mended', async () => {
  const page = await app.open('activity=juggling&step=77&paper=A0', { waitFor: 'objection' });
  await page.locator('.objection', { hasText: 'juggling' }).waitFor();
  await choiceOf(page, 'Activity').click();
  await page.getByRole('option', { name: /^in every box/ }).click();
  await page.locator('.objection', { hasText: 'A0' }).waitFor();
});
