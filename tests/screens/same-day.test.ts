// “Today’s sheets” are the same wherever they are named.
import { expect, test } from 'vitest';
import { startApp } from './app.ts';
import { addChild, codeField } from './record-parts.ts';
import { codesOf, laidOut } from './today-parts.ts';

const app = startApp();

test('Record offers the sheets that Today suggests, also where other plans than the usual are wished for', async () => {
  const page = await app.open('record', { waitFor: 'record' });
  await addChild(page, 'Fern');
  await page.evaluate(() => {
    const wishes = { minutes: 20, paper: 'Letter', print: 'grey', things: ['pencil'] };
    localStorage.setItem('samewise.wishes', JSON.stringify(wishes));
  });
  await page.reload();
  await page.getByRole('link', { name: 'Today' }).click();
  await laidOut(page);
  const codes = await codesOf(page);
  await page.getByRole('link', { name: 'Record', exact: true }).click();
  const picks = page.getByRole('radiogroup', { name: 'Today’s sheets' }).getByRole('radio');
  await picks.first().waitFor();
  const offered: string[] = [];
  for (const pick of await picks.all()) {
    await pick.click();
    offered.push(await codeField(page).inputValue());
  }
  expect(offered).toEqual(codes);
});
