// A sheet is changed: what is wrong is said at once, repaired, undone, printed after a yes, recorded by its code.
import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { makeSheet, readCode, type SheetSpec } from '../../src/sheets/index.ts';
import { codeOf, DESKTOP, PHONE, startApp } from './app.ts';
import { sheetBeingChanged } from './changing-parts.ts';
import { faultsOf, WCAG } from './faults.ts';
import { addChild, codeField, keptResults } from './record-parts.ts';

const app = startApp();
const RECIPE = 'activity=in-every-box&step=6&seed=5&sheets=2';
const beingChanged = (recipe = RECIPE, options = {}) => sheetBeingChanged(app, recipe, options);

/** The code of the sheet with four figures of each task in one colour. */
function changedThroughout(spec: SheetSpec): string {
  const figures = Array.from({ length: 4 }, (_, place) => [place, { colour: 'pink' }] as const);
  const edits = Array.from({ length: spec.tasks }, (_, task) => ({
    ...{ task, seed: 5, figures },
    ...{ shape: [], facts: [] },
  }));
  const made = makeSheet({ ...spec, edits });
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  return made.value.code;
}

/** Makes the second figure of the first box what the first one is. */
async function makeAlike(page: Page): Promise<void> {
  const label = await page.locator('.change-target').first().getAttribute('aria-label');
  const colour = label?.match(/: (\w+) circle/)?.[1];
  await page.locator('.change-target').nth(1).click();
  await page.getByRole('button', { name: `Colour: ${colour}` }).click();
  await page.locator('[data-state="uncertain"]').waitFor();
}

test('a change that makes a task uncertain is said in words and shown on the page, then repaired and undone', async () => {
  const page = await beingChanged();
  const first = await page.locator('.sheet').innerHTML();
  await makeAlike(page);
  expect(await page.locator('.change-proof').textContent()).toMatch(/Box 1 shows the same figure/);
  expect(await page.locator('.change-target[data-wrong="true"]').count()).toBe(1);
  expect(await page.getByRole('button', { name: /look here$/ }).count()).toBe(1);
  await page.getByRole('button', { name: /^Repair task 1: Box/ }).click();
  await page.locator('[data-state="uncertain"]').waitFor({ state: 'detached' });
  await page.keyboard.press('Control+z');
  await page.locator('[data-state="uncertain"]').waitFor();
  await page.keyboard.press('Control+z');
  await page.waitForFunction((was) => document.querySelector('.sheet')?.innerHTML === was, first);
  expect(page.url()).not.toContain('changed=');
  await page.keyboard.press('Control+Shift+z');
  await page.locator('[data-state="uncertain"]').waitFor();
});

test('what is not certain is printed only after a clear yes, and comes back by its code', async () => {
  const page = await beingChanged();
  await makeAlike(page);
  await page.getByText('Print it all the same').waitFor();
  const pdf = page.getByRole('button', { name: 'Get the PDF' });
  expect(await pdf.isDisabled()).toBe(true);
  await page.getByText('Print it all the same').click();
  const [saved] = await Promise.all([page.waitForEvent('download'), pdf.click()]);
  const bytes = await readFile(await saved.path());
  expect(bytes.subarray(0, 5).toString()).toBe('%PDF-');
  const code = await codeOf(page);
  expect(readCode(code)).toMatchObject({ ok: true, value: { edits: [{ task: 0 }] } });
  // A reload keeps the change; the code opens the same sheet, here and where it is recorded.
  await page.reload();
  await page.locator('.sheet svg').first().waitFor();
  await page.waitForFunction(
    (known) => document.querySelector('.code')?.textContent === known,
    code,
  );
  const drawn = await page.locator('.sheet svg').innerHTML();
  const other = await app.open(`activity=by-key`);
  await other.getByRole('button', { name: 'Open by code' }).click();
  await other.getByRole('textbox', { name: 'Code printed on the sheet' }).fill(code);
  await other.getByRole('button', { name: 'Open', exact: true }).click();
  await other.waitForFunction(
    (known) => document.querySelector('.code')?.textContent === known,
    code,
  );
  expect(await other.locator('.sheet svg').innerHTML()).toBe(drawn);
});

test('locked figures stay when the rest is drawn again; a swap changes two', async () => {
  const page = await beingChanged();
  const names = () =>
    page.locator('.change-target').evaluateAll((all) => all.map((each) => each.ariaLabel ?? ''));
  const before = await names();
  await page.locator('.change-target').nth(2).click();
  await page.getByRole('button', { name: 'Lock', exact: true }).click();
  await page.locator('.change-target[data-locked="true"]').waitFor();
  await page.getByRole('button', { name: 'Task 1: draw the rest again' }).click();
  await page.waitForFunction(
    (was) =>
      document.querySelector('.change-target')?.closest('[role="toolbar"]')?.innerHTML !== was,
    '',
  );
  await page.waitForURL(/changed=1:/);
  const after = await names();
  expect(after[2]).toBe(`${before[2]}, locked`);
  expect(after.slice(0, 16)).not.toEqual(before.slice(0, 16));
  await page.locator('.change-target').nth(0).click();
  await page.getByRole('button', { name: 'Swap with another' }).click();
  await page.getByText('Choose what to swap with').waitFor();
  await page.locator('.change-target').nth(4).click();
  await page.getByText('Choose what to swap with').waitFor({ state: 'detached' });
  const kindOf = (label = '') => label.replace(/^.*: /, '').replace(/, (locked|look here)/g, '');
  await page.waitForFunction(
    (was) => document.querySelectorAll('.change-target')[0]?.ariaLabel?.includes(was),
    kindOf(after[4]),
  );
  const swapped = await names();
  expect(kindOf(swapped[4])).toBe(kindOf(after[0]));
});

test('by keyboard alone, on a small phone, without storage', async () => {
  const page = await beingChanged(RECIPE, { viewport: PHONE });
  await page.evaluate(() => {
    Storage.prototype.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  const width = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(width).toBeLessThanOrEqual(PHONE.width);
  await page.locator('.change-target').first().focus();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Enter');
  await page.locator('.change-offer').first().waitFor();
  await page.keyboard.press('Escape');
  await page.locator('.change-drawer').waitFor({ state: 'detached' });
  await page.waitForFunction(() => document.activeElement?.className.includes('change-target'));
  await makeAlike(page);
  expect(page.url()).toContain('changed=1:');
  await page.getByText('no room to keep what can be undone').waitFor();
});

test('a change in the address that is of another sheet, or nonsense, is left out', async () => {
  const page = await app.open(`${RECIPE}&changed=1:3CFR-YRT7-FF2W-DU,x:y,2:6222,99:6222-2222`);
  expect(await page.locator('.proof').textContent()).toContain('exactly one answer');
  expect(await page.locator('.change-doubts').count()).toBe(0);
});

test.each([
  ['light', DESKTOP],
  ['dark', PHONE],
] as const)('in %s surroundings at %o nothing of it is a fault', async (colorScheme, viewport) => {
  const page = await beingChanged(RECIPE, { colorScheme, viewport });
  await makeAlike(page);
  expect(await faultsOf(page, WCAG)).toEqual([]);
  await page.locator('.change-target').first().click();
  await page.locator('.change-offer').first().waitFor();
  expect(await faultsOf(page, WCAG)).toEqual([]);
});

test('many deeds at once are done one after the other, and all of them undone', async () => {
  const page = await beingChanged();
  const first = await page.locator('.sheet').innerHTML();
  const redraw = page.getByRole('button', { name: 'Task 2: draw the rest again' });
  for (let count = 0; count < 4; count++) await redraw.click();
  for (let count = 0; count < 4; count++) await page.keyboard.press('Control+z');
  await page.waitForFunction((was) => document.querySelector('.sheet')?.innerHTML === was, first);
  expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
});

test('what can be undone and done again lasts through a reload and another screen', async () => {
  const page = await beingChanged();
  const first = await page.locator('.sheet').innerHTML();
  const redraw = page.getByRole('button', { name: 'Task 2: draw the rest again' });
  for (let count = 0; count < 3; count++) await redraw.click();
  await page.locator('.change-target').nth(2).click();
  await page.getByRole('button', { name: 'Lock', exact: true }).click();
  await page.locator('.change-target[data-locked="true"]').waitFor();
  await page.reload();
  await page.getByRole('button', { name: 'Change this page' }).click();
  await page.locator('.change-target[data-locked="true"]').waitFor();
  await page.getByRole('link', { name: 'Supplies' }).click();
  await page.getByRole('link', { name: 'Make' }).click();
  await page.getByRole('button', { name: 'Change this page' }).click();
  await page.locator('.change-target[data-locked="true"]').waitFor();
  for (let count = 0; count < 4; count++) await page.keyboard.press('Control+z');
  await page.waitForFunction((was) => document.querySelector('.sheet')?.innerHTML === was, first);
  for (let count = 0; count < 4; count++) await page.keyboard.press('Control+Shift+z');
  await page.locator('.change-target[data-locked="true"]').waitFor();
});

test('a sheet of more changes than a code on paper holds is printed, saved, opened again and recorded', async () => {
  const recipe = 'activity=odd-one-out&step=2&seed=5&sheets=2&tasks=6';
  const plain = await app.open(recipe);
  const read = readCode(await codeOf(plain));
  const page = await beingChanged(
    `${recipe}&changed=1:${read.ok ? changedThroughout(read.value) : ''}`,
  );
  await page.getByText('too long to print').first().waitFor();
  await page.locator('.change-target').first().click();
  await page.locator('.change-offer[aria-pressed="false"]').first().click();
  await page.getByRole('button', { name: 'Undo' }).click();
  const drawn = await page.locator('.sheet svg').innerHTML();
  expect(drawn).toContain('it is in the pack file');
  await page.getByRole('button', { name: 'Done changing' }).click();
  const yes = page.getByText('Print it all the same');
  if (await yes.isVisible()) await yes.click();
  const save = page.getByRole('button', { name: 'Save the pack file' });
  const [saved] = await Promise.all([page.waitForEvent('download'), save.click()]);
  const text = await readFile(await saved.path(), 'utf8');
  const [sheet] = JSON.parse(text).sheets;
  const other = await app.open('activity=by-key');
  await other
    .locator('input[type="file"]')
    .setInputFiles({ name: 'pack.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await other.getByRole('button', { name: /^Sheet 1: .*, changed$/ }).click();
  await other.waitForURL(/changed=1:/);
  expect(other.url()).toContain(sheet.code);
  const record = await app.open('record', { waitFor: 'record', viewport: PHONE });
  await addChild(record, 'Fern');
  await codeField(record).fill(sheet.code);
  await record.locator('.target').first().click();
  await record.getByRole('button', { name: 'Save the record' }).click();
  await record.getByText(/^Saved for Fern/).waitFor();
  const [kept] = await keptResults(record);
  expect(kept?.code).toBe(sheet.code);
}, 90_000);

test('a changed sheet is recorded by its code, with what is printed on it', async () => {
  const page = await beingChanged();
  await page.locator('.change-target').nth(1).click();
  await page.getByRole('button', { name: 'Colour: yellow' }).click();
  await page.waitForURL(/changed=1:/);
  await page.waitForFunction(() =>
    location.hash.includes(`changed=1:${document.querySelector('output.code')?.textContent}`),
  );
  const code = await codeOf(page);
  const record = await app.open('record', { waitFor: 'record' });
  await addChild(record, 'Fern');
  await codeField(record).fill(code);
  await record.locator('.target').first().waitFor();
  const yellow = record.getByRole('button', { name: /^Task 1: yellow/ }).first();
  await yellow.click();
  await record.getByRole('button', { name: 'Save the record' }).click();
  await record.getByText(/^Saved for Fern/).waitFor();
  const [kept] = await keptResults(record);
  expect(kept?.code).toBe(code);
  expect(JSON.stringify(kept)).toContain('yellow');
});
