// Recording sheets: by their code, with one tap or task by task, taken back, and without a mouse.
import { expect, test } from 'vitest';
import { DESKTOP, drawn, PHONE, startApp } from './app.ts';
import { faultsOf } from './faults.ts';
import {
  addChild,
  codeField,
  codeOfElsewhere,
  entriesOf,
  recordAll,
  writeCode,
} from './record-parts.ts';

const app = startApp();
const CODE = codeOfElsewhere();

test('a sheet never opened here is recorded by its code with one tap, and is there after a reload', async () => {
  const page = await app.open('record', { waitFor: 'record' });
  await addChild(page, 'Fern');
  await recordAll(page, CODE.toLowerCase().replaceAll('-', ' '), 'All with help');
  await page.getByText('Saved for Fern, odd one out, step 4: 3 right with help.').waitFor();
  await page.reload();
  const entry = entriesOf(page);
  await entry.getByText('Odd one out, step 4').waitFor();
  await entry.getByText('3 right with help').waitFor();
});

test('task by task, with what was chosen instead and a note; an open task is not tried', async () => {
  const page = await app.open('record', { waitFor: 'record' });
  await addChild(page, 'Fern');
  await writeCode(page, CODE);
  await page.getByRole('button', { name: 'Save the record' }).click();
  await page.getByText('Say first how it went').waitFor();
  const tap = (task: number, name: string) =>
    page
      .getByRole('radiogroup', { name: `Task ${task}` })
      .getByRole('radio', { name, exact: true });
  await tap(1, 'right').click();
  await tap(2, 'not yet').click();
  await page.getByRole('button', { name: 'More to note' }).click();
  await page.getByRole('textbox', { name: 'Task 2: chosen instead' }).fill('the heart');
  await page.getByRole('textbox', { name: 'Note' }).fill('Told me why.');
  await page.getByRole('button', { name: 'Save the record' }).click();
  const entry = entriesOf(page);
  await entry.getByText('1 right, 1 not yet, 1 not tried').waitFor();
  await entry.getByText('task 2: the heart instead').waitFor();
  await entry.getByText('Told me why.').waitFor();
});

test('a record is taken back right away, brought back, and taken back from the list', async () => {
  const page = await app.open('record', { waitFor: 'record' });
  await addChild(page, 'Fern');
  await recordAll(page, CODE, 'Not yet');
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await page.getByText('Nothing recorded yet.').waitFor();
  await page.getByRole('button', { name: 'Bring it back' }).click();
  await entriesOf(page).waitFor();
  await entriesOf(page)
    .getByRole('button', { name: /^Undo: odd one out/ })
    .click();
  await page.getByText('Nothing recorded yet.').waitFor();
});

test('a wrong code says why, and what was typed stays', async () => {
  const page = await app.open('record', { waitFor: 'record' });
  await addChild(page, 'Fern');
  const wrong = CODE.endsWith('2') ? `${CODE.slice(0, -1)}3` : `${CODE.slice(0, -1)}2`;
  await codeField(page).fill(wrong);
  await page.keyboard.press('Enter');
  await page.getByText('Compare it with the code on the sheet').waitFor();
  expect(await codeField(page).inputValue()).toBe(wrong);
});

test('Make fetches nothing of the records, and is as it was left when one comes back', async () => {
  const page = await app.open('seed=7&activity=by-key&step=2');
  const asked: string[] = [];
  page.context().on('request', (request) => asked.push(request.url()));
  await page.reload();
  const before = await drawn(page);
  expect(asked.filter((url) => url.includes('record'))).toEqual([]);
  expect(await page.evaluate(() => indexedDB.databases())).toEqual([]);
  await page.getByRole('link', { name: 'Record' }).click();
  await page.getByRole('button', { name: 'Add a child' }).waitFor();
  expect(await page.getByRole('link', { name: 'Record' }).getAttribute('aria-current')).toBe(
    'page',
  );
  await page.getByRole('link', { name: 'Make' }).click();
  expect(await drawn(page)).toBe(before);
});

test('the keyboard alone adds a child and records a sheet', async () => {
  const page = await app.open('record', { waitFor: 'record' });
  await page.getByRole('button', { name: 'Add a child' }).focus();
  await page.keyboard.press('Enter');
  await page.keyboard.type('Fern');
  await page.keyboard.press('Enter');
  await page.getByText('Fern is saved.').waitFor();
  const tabTo = async (name: string) => {
    for (let stop = 0; stop < 20; stop++) {
      await page.keyboard.press('Tab');
      const focused = await page.evaluate(() =>
        document.activeElement?.id && document.activeElement.matches('input')
          ? document.querySelector(`label[for="${document.activeElement.id}"]`)?.textContent
          : document.activeElement?.textContent,
      );
      if (focused === name) return;
    }
    throw new Error(`${name} was not reached by Tab`);
  };
  await tabTo('Code printed on the sheet');
  await page.keyboard.type(CODE);
  await page.getByText('Odd one out, step 4: 3 tasks.').waitFor();
  await tabTo('All right');
  await page.keyboard.press('Space');
  await tabTo('Save the record');
  await page.keyboard.press('Enter');
  await page.getByText('Saved for Fern, odd one out, step 4: 3 right.').waitFor();
  // The message has the focus, and Undo is the next stop.
  await tabTo('Undo');
  await page.keyboard.press('Enter');
  await page.getByText('Taken back.').waitFor();
});

test.each([
  ['dark', DESKTOP],
  ['light', PHONE],
] as const)(
  'in %s surroundings at %o a sheet being recorded has no fault and fits',
  async (colorScheme, viewport) => {
    const page = await app.open('record', { colorScheme, viewport, waitFor: 'record' });
    await addChild(page, 'Fern');
    await recordAll(page, CODE, 'All right');
    await writeCode(page, CODE);
    await page.getByRole('radio', { name: 'not yet', exact: true }).first().click();
    await page.getByRole('button', { name: 'More to note' }).click();
    expect(await faultsOf(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(viewport.width);
    for (const target of await page.locator('button:visible, input:visible, a:visible').all()) {
      const box = await target.boundingBox();
      expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(24);
    }
  },
);
