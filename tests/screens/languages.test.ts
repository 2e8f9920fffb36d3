// The language of the app: all it says comes from one catalogue, and changing it loses nothing.
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { EDITING_WORDS } from '../../src/editing/index.ts';
import { hashOf, PLACE_NAMES, type PlaceName } from '../../src/web/place-names.ts';
import { DESKTOP, drawn, PHONE, startApp } from './app.ts';
import { CHILD, NICKNAME, redForOrange, TODAY, weeksOfRecords } from './growth-records.ts';
import { builtWithInvented, LEFT_TO_RIGHT, RIGHT_TO_LEFT } from './invented-languages.ts';
import { putEntries } from './kept-entries.ts';
import { coreSays, outsideBrackets } from './said-outside.ts';

const app = startApp({ build: builtWithInvented });

/** What shows that a screen is there with all that it is told by workers. */
const SIGNS: Readonly<Record<PlaceName, string>> = {
  today: '.today-day[aria-busy="false"] .day-things',
  make: '.sheet svg',
  week: '.week-bar',
  record: '.results .entry-sheet',
  growth: '.course-plot',
  supplies: '.stickers',
};

/** The app in a language with a child of many records, at one of its places. */
async function openAt(place: PlaceName, language: string, viewport = PHONE): Promise<Page> {
  const page = await app.open('record', { waitFor: 'record', viewport });
  await page.clock.setFixedTime(new Date(`${TODAY}T09:00`));
  await putEntries(page, [CHILD, ...weeksOfRecords(), ...redForOrange()]);
  await page.evaluate(
    ([child, tag]) => {
      localStorage.setItem('samewise.child.real', child ?? '');
      localStorage.setItem('samewise.language', tag ?? '');
    },
    [CHILD.kind === 'child' ? CHILD.child : '', language],
  );
  await page.goto(`${app.address()}${hashOf(place)}`);
  await page.reload();
  await page.locator(SIGNS[place]).first().waitFor();
  return page;
}

function choose(page: Page, language: string) {
  return page.locator('.language select').selectOption(language);
}

describe('in an invented language', () => {
  test.each(PLACE_NAMES)('%s says nothing of its own in English', async (place) => {
    const page = await openAt(place, LEFT_TO_RIGHT);
    for (const fold of await page.locator('main .fold[aria-expanded="false"]').elementHandles()) {
      await fold.click();
    }
    const known = [...coreSays(), NICKNAME, 'Laughed at the snail.'];
    expect(await outsideBrackets(page, known)).toEqual([]);
  });

  test('changing a page says nothing of its own in English', async () => {
    const page = await openAt('make', LEFT_TO_RIGHT, DESKTOP);
    await page.locator('.change-toggle').click();
    await page.locator('.whole-target').first().click();
    await page.locator('.change-drawer .chip').nth(2).waitFor();
    const { at, add, take } = EDITING_WORDS.en;
    const ofTheCore = [at('box', 0), add('box'), take('box')];
    const said = await outsideBrackets(page, [...coreSays(), ...ofTheCore, NICKNAME]);
    // What react-aria says of closing, in the languages that it has.
    expect(said.filter((text) => text !== 'Dismiss')).toEqual([]);
  });

  test('planning a week says nothing of its own in English', async () => {
    const page = await openAt('week', LEFT_TO_RIGHT);
    await page.locator('.week button.next').first().click();
    await page.locator('.slip').first().waitFor();
    const said = await outsideBrackets(page, [...coreSays(), NICKNAME]);
    // What react-aria says of dragging, in the languages that it has.
    expect(said.filter((text) => !/\bdrag/i.test(text))).toEqual([]);
  });
});

test('a language that is written from right to left turns the page about, and is remembered', async () => {
  const page = await app.open('seed=7');
  expect(await page.locator('html').getAttribute('dir')).toBe('ltr');
  await choose(page, RIGHT_TO_LEFT);
  await page.locator(`html[lang="${RIGHT_TO_LEFT}"][dir="rtl"]`).waitFor();
  await page.reload();
  await drawn(page);
  expect(await page.locator('html').getAttribute('dir')).toBe('rtl');
  await choose(page, 'en');
  await page.locator('html[lang="en"][dir="ltr"]').waitFor();
});

test('the browser’s own wish is followed where nothing was chosen', async () => {
  const page = await app.open('seed=7', { locale: 'ar-EG' });
  expect(await page.locator('html').getAttribute('lang')).toBe(RIGHT_TO_LEFT);
});

test('changing the language on Make keeps the recipe and half-typed names, and the focus', async () => {
  const page = await app.open('seed=7&step=5');
  const before = await drawn(page);
  const address = page.url();
  await page.getByRole('button', { name: 'For a group' }).click();
  await page.getByRole('textbox', { name: 'Names, one a line' }).fill('Fern\nWr');
  await page.locator('.language select').focus();
  await choose(page, LEFT_TO_RIGHT);
  const names = page.getByRole('textbox', { name: '⟦Names, one a line⟧' });
  await names.waitFor();
  expect(await names.inputValue()).toBe('Fern\nWr');
  expect(page.url()).toBe(address);
  expect(await drawn(page)).toBe(before);
  expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('SELECT');
});

test.todo('changing the language keeps a half-filled record');

test('a catalogue that cannot be fetched leaves the app as it is, and says so', async () => {
  const page = await app.open('seed=7');
  await page.route(/catalogue/, (route) => route.abort());
  await choose(page, LEFT_TO_RIGHT);
  await page.getByText('That language could not be fetched.').waitFor();
  expect(await page.locator('html').getAttribute('lang')).toBe('en');
});
