// Changing the day by hand: each change is kept, told, and can be taken back.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { activityOf } from '../../src/activities/index.ts';
import { difficultyOf, sheetDifficulty } from '../../src/learner/index.ts';
import { makeSheetOfCode } from '../../src/sheets/index.ts';
import { startApp } from './app.ts';
import { keptEntries } from './kept-entries.ts';
import {
  change,
  codesIn,
  codesOf,
  laidOut,
  namesOf,
  openToday,
  plansOf,
  sheetAt,
  undo,
} from './today-parts.ts';

const app = startApp();
/** More than any ladder has rungs of half a logit. */
const MOST_NOTCHES = 30;

function sheetOf(code: string) {
  const made = makeSheetOfCode(code);
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  return made.value;
}

/** How hard a sheet is, in logits. */
function logitsOf(code: string): number {
  const { spec, tasks } = sheetOf(code);
  const activity = activityOf(spec.activity);
  return sheetDifficulty(tasks.map(({ printed }) => difficultyOf(activity, printed))).logits;
}

const activitiesOf = (codes: readonly string[]) => codes.map((code) => sheetOf(code).spec.activity);

async function codesAfterReload(page: Page): Promise<readonly string[]> {
  await page.reload();
  await laidOut(page);
  return codesOf(page);
}

test('not today takes a sheet out of the day, also after a reload, and undo brings it back', async () => {
  const page = await openToday(app);
  const codes = await codesOf(page);
  expect(await change(page, 1, 'Not today')).toMatch(/ is taken out of today\.$/);
  const left = codes.filter((_, place) => place !== 1);
  expect(await codesOf(page)).toEqual(left);
  expect([...(await plansOf(page)).values()].map(codesIn)).toEqual([left]);
  await undo(page);
  expect(await codesOf(page)).toEqual(codes);
  await page.getByRole('button', { name: 'Bring it back' }).click();
  await page.getByText('It is back.').waitFor();
  expect(await codesAfterReload(page)).toEqual(left);
});

test('a day can be emptied, says so, and another plan fills it', async () => {
  const page = await openToday(app);
  const { length } = await codesOf(page);
  for (let left = length; left > 1; left--) await change(page, 0, 'Not today');
  await sheetAt(page, 0)
    .getByRole('button', { name: /^Change/ })
    .click();
  await page.getByRole('menuitem', { name: 'Not today' }).click();
  await page.getByText('Nothing is planned for today any more.').waitFor();
  await page.getByRole('button', { name: 'Another plan for today' }).click();
  await laidOut(page);
  expect((await codesOf(page)).length).toBeGreaterThanOrEqual(2);
});

test('something else is of an activity that the day has not, and none that was declined comes again', async () => {
  const page = await openToday(app);
  const before = await codesOf(page);
  const names = await namesOf(page);
  await change(page, 1, 'Something else');
  const second = await codesOf(page);
  expect(second.filter((_, place) => place !== 1)).toEqual(
    before.filter((_, place) => place !== 1),
  );
  await change(page, 1, 'Something else');
  const third = await codesOf(page);
  const given = [...activitiesOf(before), ...activitiesOf([second[1] ?? '', third[1] ?? ''])];
  expect(new Set(given).size).toBe(given.length);
  expect(await codesAfterReload(page)).toEqual(third);
  expect((await namesOf(page))[0]).toBe(names[0]);
});

test('harder is harder, easier is easier, of the same activity and content, and undo gives the sheet back', async () => {
  const page = await openToday(app);
  const [code = '', ...rest] = await codesOf(page);
  expect(await change(page, 0, 'Harder')).toMatch(/, one notch harder\.$/);
  const [harder = '', ...others] = await codesOf(page);
  expect(others).toEqual(rest);
  expect(activitiesOf([harder])).toEqual(activitiesOf([code]));
  expect(logitsOf(harder)).toBeGreaterThan(logitsOf(code));
  await sheetAt(page, 0).getByText('As you chose it.').waitFor();
  expect(await change(page, 0, 'Easier')).toMatch(/, one notch easier\.$/);
  const [easier = ''] = await codesOf(page);
  expect(logitsOf(easier)).toBeLessThan(logitsOf(harder));
  await undo(page);
  expect(await codesAfterReload(page)).toEqual([harder, ...rest]);
});

test('where nothing easier can be had it is told at that sheet, and nothing changes', async () => {
  const page = await openToday(app);
  let said = '';
  for (let notch = 0; notch < MOST_NOTCHES && !said.startsWith('It gets'); notch++) {
    said = await change(page, 0, 'Easier');
  }
  expect(said).toMatch(/^It gets no easier/);
  expect(await sheetAt(page, 0).locator('.message').count()).toBe(1);
  expect(await page.getByRole('button', { name: 'Undo', exact: true }).count()).toBe(0);
  const codes = await codesOf(page);
  expect(await codesAfterReload(page)).toEqual(codes);
});

test('the order is changed and kept; the first cannot come earlier nor the last later', async () => {
  const page = await openToday(app);
  const codes = await codesOf(page);
  const [first = '', second = '', ...rest] = codes;
  await change(page, 0, 'Give it later');
  expect(await codesOf(page)).toEqual([second, first, ...rest]);
  // What was said stays with the sheet that was moved.
  expect(await sheetAt(page, 1).locator('.message').count()).toBe(1);
  await change(page, 1, 'Give it earlier');
  expect(await codesAfterReload(page)).toEqual(codes);
  const ends = [
    [0, 'Give it earlier'],
    [codes.length - 1, 'Give it later'],
  ] as const;
  for (const [place, name] of ends) {
    await sheetAt(page, place)
      .getByRole('button', { name: /^Change/ })
      .click();
    const item = page.getByRole('menuitem', { name });
    expect(await item.getAttribute('aria-disabled')).toBe('true');
    await page.keyboard.press('Escape');
  }
});

test('another plan has other activities, is another one each time, and can be taken back', async () => {
  const page = await openToday(app);
  const before = await codesOf(page);
  const another = async () => {
    await page.getByRole('button', { name: 'Another plan for today' }).click();
    await page.locator('.message:focus').waitFor();
    await laidOut(page);
    return codesOf(page);
  };
  const second = await another();
  expect(activitiesOf(second).filter((id) => activitiesOf(before).includes(id))).toEqual([]);
  expect(await codesAfterReload(page)).toEqual(second);
  const third = await another();
  expect(third).not.toEqual(second);
  await undo(page);
  expect(await codesOf(page)).toEqual(second);
});

test('where the browser cannot store, it says so, and nothing of the day is lost', async () => {
  const page = await openToday(app);
  const codes = await codesOf(page);
  await change(page, 0, 'Give it later');
  const kept = await keptEntries(page);
  const standing = await codesOf(page);
  await page.evaluate(() => {
    IDBObjectStore.prototype.add = () => {
      throw new DOMException('no room', 'QuotaExceededError');
    };
  });
  for (const name of ['Not today', 'Something else', 'Give it earlier']) {
    const said = await change(page, 1, name);
    expect(said).toContain('This browser has no room left.');
    expect(await page.getByRole('button', { name: 'Undo', exact: true }).count()).toBe(0);
    expect(await codesOf(page)).toEqual(standing);
  }
  expect(await keptEntries(page)).toEqual(kept);
  await page.reload();
  await laidOut(page);
  expect(await codesOf(page)).toEqual(standing);
  expect([...standing].sort()).toEqual([...codes].sort());
});

test('what cannot be kept can still be printed, and it is said', async () => {
  const page = await openToday(app);
  await page.evaluate(() => {
    IDBObjectStore.prototype.add = () => {
      throw new DOMException('no room', 'QuotaExceededError');
    };
  });
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Get the PDF' }).click();
  await saving;
  await page.getByText('The plan could not be kept.').waitFor();
});
