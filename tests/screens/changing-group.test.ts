// The pack of a group on the table: turned through child by child, each sheet changed by itself, printed and kept.
import { readFileSync } from 'node:fs';
import { unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { codeOf, startApp } from './app.ts';
import { textOf } from './files.ts';
import { addChild, codeField, keptResults } from './record-parts.ts';

const app = startApp();
const RECIPE = 'activity=in-every-box&step=6&sheets=2&seed=3';

async function withNames(names: string): Promise<Page> {
  const page = await app.open(RECIPE);
  await page.getByRole('button', { name: 'For a group' }).click();
  await page.getByRole('textbox', { name: 'Names, one a line' }).fill(names);
  await page.getByText('Wren, 1 of', { exact: false }).first().waitFor();
  return page;
}

/** Makes the second figure of the first box what the first one is; the code that the sheet then has. */
async function makeAlike(page: Page): Promise<string> {
  await page.getByRole('button', { name: 'Change this page' }).click();
  const targets = page.locator('.change-target');
  await targets.first().waitFor();
  const before = await codeOf(page);
  const label = await targets.first().getAttribute('aria-label');
  const colour = label?.match(/: (\w+) circle/)?.[1];
  await targets.nth(1).click();
  await page.getByRole('button', { name: `Colour: ${colour}` }).click();
  await page.locator('[data-state="uncertain"]').waitFor();
  await page.waitForFunction(
    (was) => document.querySelector('output.code')?.textContent !== was,
    before,
  );
  return codeOf(page);
}

async function savedBy(page: Page, name: string): Promise<Buffer> {
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name }).click();
  return readFileSync(await (await saving).path());
}

test('a child’s sheet is chosen, changed, and in all that is printed and kept; taken back it is as it was', async () => {
  const page = await withNames('Wren\nMoss+1');
  await page.getByText('sheet 1 of 4').waitFor();
  await page.getByRole('button', { name: 'Next child' }).click();
  await page.getByText('Moss, 2 of 2').waitFor();
  await page.getByText('sheet 3 of 4').waitFor();
  const made = await codeOf(page);
  const changed = await makeAlike(page);
  expect(changed).not.toBe(made);
  expect(new URL(page.url()).hash).toContain(`changed=3:${changed}`);
  expect(page.url()).not.toContain('Moss');
  await page.getByText('sheet 3, task 1', { exact: false }).first().waitFor();
  await page.getByText('Print it all the same').click();
  const pdf = await savedBy(page, 'Get the PDF');
  expect(textOf(pdf)).toContain(changed.slice(0, 12));
  const file = JSON.parse((await savedBy(page, 'Save the pack file')).toString());
  expect(file.sheets[2]).toMatchObject({ code: changed, edited: true, child: { name: 'Moss' } });
  expect(file.sheets[0].edited).toBeUndefined();
  const zip = unzipSync(new Uint8Array(await savedBy(page, 'One PDF each')));
  expect(textOf(zip['2-Moss.pdf'] ?? new Uint8Array())).toContain(changed.slice(0, 12));
  expect(textOf(zip['1-Wren.pdf'] ?? new Uint8Array())).not.toContain(changed.slice(0, 12));
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await page.waitForFunction(
    (was) => document.querySelector('output.code')?.textContent === was,
    made,
  );
  expect(page.url()).not.toContain('changed=');
});

test('a changed sheet stays its child’s when the group changes, and through a reload', async () => {
  const page = await withNames('Wren\nMoss+1');
  await page.getByRole('button', { name: 'Next child' }).click();
  await page.getByText('Moss, 2 of 2').waitFor();
  const changed = await makeAlike(page);
  await page.getByRole('textbox', { name: 'Names, one a line' }).fill('Wren\nFern\nMoss+1');
  await page.getByText('sheet 5, task 1', { exact: false }).first().waitFor();
  await page.reload();
  await page.getByText('sheet 5, task 1', { exact: false }).first().waitFor();
  await page.getByRole('button', { name: 'Next child' }).click();
  await page.getByText('Fern, 2 of 3').waitFor();
  await page.getByRole('button', { name: 'Next child' }).click();
  await page.getByText('Moss, 3 of 3').waitFor();
  await page.waitForFunction(
    (known) => document.querySelector('output.code')?.textContent === known,
    changed,
  );
});

test('a child’s changed sheet is recorded by its code, as it was changed', async () => {
  const page = await withNames('Wren\nMoss+1');
  await page.getByRole('button', { name: 'Next child' }).click();
  await page.getByText('Moss, 2 of 2').waitFor();
  const changed = await makeAlike(page);
  const drawn = await page.locator('.change-target').nth(1).getAttribute('aria-label');
  const record = await app.open('record', { waitFor: 'record' });
  await addChild(record, 'Fern');
  await codeField(record).fill(changed);
  const colour = drawn?.match(/: (\w+) circle/)?.[1];
  await record
    .getByRole('button', { name: new RegExp(`^Task 1: ${colour}`) })
    .nth(1)
    .click();
  await record.getByRole('button', { name: 'Save the record' }).click();
  await record.getByText(/^Saved for Fern/).waitFor();
  expect(await keptResults(record)).toMatchObject([{ code: changed }]);
});

test('no page is made for a name that is half written', async () => {
  const page = await withNames('Wren\nMoss');
  const names = page.getByRole('textbox', { name: 'Names, one a line' });
  await page.clock.install();
  await page.clock.pauseAt(new Date(Date.now() + 60_000));
  await names.press('End');
  await names.pressSequentially('\nFern');
  await page.clock.runFor(300);
  await names.pressSequentially('\nBay');
  await page.clock.runFor(300);
  // What the maker was asked for would have been answered before this, as it answers one after the other.
  await page.getByRole('button', { name: 'Next child' }).click();
  await page.getByText('Moss, 2 of 2').waitFor();
  await page.clock.runFor(200);
  await page.getByText('Moss, 2 of 4').waitFor();
});

test('a sheet that is opened by its code is for nobody, and the group comes back with another', async () => {
  const page = await withNames('Wren\nMoss');
  const code = await codeOf(page);
  await page.getByRole('button', { name: 'Another like this' }).click();
  await page.waitForFunction(
    (was) => document.querySelector('output.code')?.textContent !== was,
    code,
  );
  await page.getByRole('button', { name: 'Open by code' }).click();
  await page.getByRole('textbox', { name: 'Code printed on the sheet' }).fill(code);
  await page.keyboard.press('Enter');
  await page.getByText('was opened by its code').waitFor();
  await page.getByText('sheet 1 of 1').waitFor();
  expect(await codeOf(page)).toBe(code);
  expect(await page.getByRole('button', { name: 'One PDF each' }).count()).toBe(0);
  expect(textOf(await savedBy(page, 'Get the PDF'))).not.toContain('Wren');
  await page.getByRole('button', { name: 'Another like this' }).click();
  await page.getByText('Wren, 1 of 2').waitFor();
});
