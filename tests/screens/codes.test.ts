// Codes: from a sheet to its code, and from the code to the same sheet.
import { expect, test } from 'vitest';
import { codeOf, drawn, drawnAnew, startApp } from './app.ts';

const app = startApp();

async function open(page: Awaited<ReturnType<typeof app.open>>, code: string) {
  await page.getByRole('button', { name: 'Open by code' }).click();
  await page.getByRole('textbox', { name: 'Code printed on the sheet' }).fill(code);
  await page.getByRole('button', { name: 'Open', exact: true }).click();
}

test('a code opens the very sheet that it was copied from, whichever of the pack that was', async () => {
  const maker = await app.open('activity=in-every-box&step=6&seed=4711&sheets=5');
  const first = await drawn(maker);
  await maker.getByRole('button', { name: 'Next sheet' }).click();
  const second = await drawnAnew(maker, first);
  const code = await codeOf(maker);
  const other = await app.open('seed=1');
  const before = await drawn(other);
  await open(other, code.toLowerCase());
  expect(await drawnAnew(other, before)).toBe(second);
  expect(await codeOf(other)).toBe(code);
  await other.getByText('sheet 1 of 1').waitFor();
});

test('a code with changed values opens the very sheet too', async () => {
  const maker = await app.open(
    'step=3&seed=5&with.content=shapes&with.boxes=4&tasks=1&paper=Letter',
  );
  const made = await drawn(maker);
  const other = await app.open('seed=1');
  const before = await drawn(other);
  await open(other, await codeOf(maker));
  expect(await drawnAnew(other, before)).toBe(made);
});

test('a mistyped code is told, stays to be mended, and loses nothing', async () => {
  const page = await app.open('seed=7');
  const before = await drawn(page);
  const code = await codeOf(page);
  const wrong = code.endsWith('2') ? `${code.slice(0, -1)}3` : `${code.slice(0, -1)}2`;
  await open(page, wrong);
  const form = page.getByRole('dialog');
  await form.locator('.objection').waitFor();
  expect(await form.locator('.objection').textContent()).toContain(
    'Compare it with the code on the sheet',
  );
  expect(await page.getByRole('textbox', { name: 'Code printed on the sheet' }).inputValue()).toBe(
    wrong,
  );
  await page.keyboard.press('Escape');
  expect(await drawn(page)).toBe(before);
});

test('the code is copied', async () => {
  const page = await app.open('seed=7', { permissions: ['clipboard-read', 'clipboard-write'] });
  await page.getByRole('button', { name: 'Copy the code' }).click();
  await page.getByText('Copied').waitFor();
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(await codeOf(page));
});
