// Children on the Record screen: added, changed, backed up, deleted, restored; and a browser that keeps nothing.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { DESKTOP, drawn, PHONE, startApp } from './app.ts';
import { faultsOf, WCAG } from './faults.ts';
import { addChild, codeOfElsewhere, entriesOf, recordAll } from './record-parts.ts';

const app = startApp();

test('a child with a nickname alone is there after a reload', async () => {
  const page = await app.open('record', { waitFor: 'record' });
  await addChild(page, 'Fern');
  await page.reload();
  await page.getByRole('radio', { name: 'Fern' }).waitFor();
});

test('what is wrong is told where it stands and stays; what is changed is kept', async () => {
  const page = await app.open('record', { waitFor: 'record' });
  await addChild(page, 'Fern');
  await page.getByRole('button', { name: 'Change Fern' }).click();
  const languages = page.getByRole('textbox', { name: /^Languages/ });
  await languages.fill('Polish, Gardenish');
  await page.getByRole('radio', { name: 'left' }).click();
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByText('“Gardenish” is no language known here.').waitFor();
  expect(await languages.inputValue()).toBe('Polish, Gardenish');
  await languages.fill('Polish, pt-BR');
  await page.getByRole('button', { name: 'Save', exact: true }).click();
  await page.getByText('Fern is saved.').waitFor();
  await page.reload();
  await page.getByRole('button', { name: 'Change Fern' }).click();
  expect(await languages.inputValue()).toBe('Polish, pt-BR');
  expect(await page.getByRole('radio', { name: 'left' }).isChecked()).toBe(true);
});

test('backup, deletion and restoring give all back, and restoring twice adds nothing', async () => {
  const page = await app.open('record', { waitFor: 'record' });
  await addChild(page, 'Fern');
  await recordAll(page, codeOfElsewhere(), 'All right');
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Back up to a file' }).click();
  const path = await (await saving).path();
  expect(readFileSync(path, 'utf8')).toContain('"nickname":"Fern"');
  await page.getByRole('button', { name: 'Delete Fern' }).click();
  await page.getByText('Delete Fern and 1 record for good?').waitFor();
  await page.getByRole('button', { name: 'Delete for good' }).click();
  await page.getByText('No child yet.').waitFor();
  await page.reload();
  await page.getByText('No child yet.').waitFor();
  const restore = async () => {
    const choosing = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Restore from a file' }).click();
    await (await choosing).setFiles(path);
  };
  await restore();
  await page.getByText('2 entries were added.').waitFor();
  await page.getByRole('radio', { name: 'Fern' }).waitFor();
  expect(await entriesOf(page).textContent()).toContain('3 right');
  await restore();
  await page.getByText('Nothing was added').waitFor();
});

test('a file that is no backup is refused in words', async () => {
  const page = await app.open('record', { waitFor: 'record' });
  const choosing = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Restore from a file' }).click();
  const buffer = Buffer.from('{"format":"a shopping list","version":1,"entries":[]}');
  await (await choosing).setFiles({ name: 'list.json', mimeType: 'application/json', buffer });
  await page
    .getByText('Nothing was restored, and nothing was changed. This is no backup')
    .waitFor();
});

test.each([
  ['by a newer version', '{"format":"samewise.records","version":99,"entries":[]}', 'newer'],
  ['and is cut off', '{"format":"samewise.records","version":2,"entries":[', 'only a part of one'],
])(
  'a backup that was made %s is refused in words, and the child that is there stays',
  async (_, text, word) => {
    const page = await app.open('record', { waitFor: 'record' });
    await addChild(page, 'Fern');
    const choosing = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Restore from a file' }).click();
    const buffer = Buffer.from(text);
    await (await choosing).setFiles({ name: 'kept.json', mimeType: 'application/json', buffer });
    const told = page.getByText('Nothing was restored, and nothing was changed.');
    await told.filter({ hasText: word }).waitFor();
    await page.reload();
    await page.getByText('Fern', { exact: true }).first().waitFor();
  },
);

test('a browser that keeps nothing is told plainly, and Make goes on', async () => {
  const page = await app.open('seed=7');
  await page.addInitScript(() => {
    const open = () => {
      throw new DOMException('no storage here', 'SecurityError');
    };
    Object.defineProperty(window, 'indexedDB', { value: { open } });
  });
  await page.reload();
  await page.getByRole('link', { name: 'Record' }).click();
  const told = page.getByRole('alert').filter({ hasText: 'keeps nothing for this page' });
  await told.getByText('Open the page in an ordinary window').waitFor();
  await page.getByRole('link', { name: 'Make' }).click();
  await drawn(page);
});

test.each([
  ['light', DESKTOP],
  ['dark', PHONE],
] as const)(
  'in %s surroundings at %o the form and the question have no fault',
  async (colorScheme, viewport) => {
    const page = await app.open('record', { colorScheme, viewport, waitFor: 'record' });
    expect(await faultsOf(page)).toEqual([]);
    await addChild(page, 'Fern');
    await page.getByRole('button', { name: 'Change Fern' }).click();
    await page.getByRole('button', { name: 'What the hand does well' }).click();
    expect(await faultsOf(page)).toEqual([]);
    await page.getByRole('button', { name: 'Cancel' }).click();
    await page.getByRole('button', { name: 'Delete Fern' }).click();
    await page.getByRole('alertdialog').waitFor();
    // What opens over the page lies outside its landmarks, which only the advice beyond WCAG minds.
    expect(await faultsOf(page, WCAG)).toEqual([]);
  },
);
