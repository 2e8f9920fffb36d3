// The language of the app: all it says comes from one catalogue, and changing it loses nothing.
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { EDITING_WORDS } from '../../src/editing/index.ts';
import { PLACE_NAMES, type PlaceName } from '../../src/web/place-names.ts';
import { DESKTOP, drawn, drawnAnew, PHONE, startApp } from './app.ts';
import { NICKNAME } from './growth-records.ts';
import { builtWithInvented, LEFT_TO_RIGHT, RIGHT_TO_LEFT } from './invented-languages.ts';
import { keptEntries } from './kept-entries.ts';
import { addChild, codeOfElsewhere, outcomeChip, writeCode } from './record-parts.ts';
import { coreSays, outsideBrackets } from './said-outside.ts';
import { openInLanguage } from './spoken-places.ts';

const app = startApp({ build: builtWithInvented });

/** On a phone, if nothing else is said. */
function openAt(place: PlaceName, language: string, viewport = PHONE): Promise<Page> {
  return openInLanguage(app, language, place, { viewport });
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
  const forNobody = await drawn(page);
  const address = page.url();
  await page.getByRole('button', { name: 'For a group' }).click();
  await page.getByRole('textbox', { name: 'Names, one a line' }).fill('Fern\nWr');
  const before = await drawnAnew(page, forNobody);
  await page.locator('.language select').focus();
  await choose(page, LEFT_TO_RIGHT);
  const names = page.getByRole('textbox', { name: '⟦Names, one a line⟧' });
  await names.waitFor();
  expect(await names.inputValue()).toBe('Fern\nWr');
  expect(page.url()).toBe(address);
  expect(await drawn(page)).toBe(before);
  expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('SELECT');
});

test('changing the language keeps a half-filled record', async () => {
  const page = await app.open('record', { waitFor: 'record' });
  await addChild(page, 'Otto');
  await addChild(page, 'Fern');
  await page.getByRole('radio', { name: /Otto$/ }).click();
  await writeCode(page, codeOfElsewhere());
  await outcomeChip(page, 2, 'not yet').click();
  await page.getByRole('button', { name: 'More to note' }).click();
  await page.getByRole('textbox', { name: 'Note', exact: true }).fill('half a sen');
  await choose(page, LEFT_TO_RIGHT);
  // What is chosen carries a tick before its name.
  const chip = page
    .getByRole('radiogroup', { name: '⟦Task 2⟧' })
    .getByRole('radio', { name: '✓ ⟦not yet⟧', exact: true });
  await chip.waitFor();
  expect(await page.locator('.code-line-in').inputValue()).toBe(codeOfElsewhere());
  await page.getByRole('button', { name: '⟦Save the record⟧' }).click();
  await page.getByText(/⟦Saved for Otto/).waitFor();
  const entries = await keptEntries(page);
  const otto = entries.find((entry) => entry.kind === 'child' && entry.nickname === 'Otto');
  const result = entries.find(({ kind }) => kind === 'result');
  expect(result).toMatchObject({
    child: otto?.kind === 'child' ? otto.child : '',
    code: codeOfElsewhere(),
    note: 'half a sen',
    tasks: [{ outcome: 'not-tried' }, { outcome: 'not-yet' }, { outcome: 'not-tried' }],
  });
});

test('a catalogue that cannot be fetched leaves the app as it is, and says so', async () => {
  const page = await app.open('seed=7');
  await page.route(/catalogue/, (route) => route.abort());
  await choose(page, LEFT_TO_RIGHT);
  await page.getByText('That language could not be fetched.').waitFor();
  expect(await page.locator('html').getAttribute('lang')).toBe('en');
});
