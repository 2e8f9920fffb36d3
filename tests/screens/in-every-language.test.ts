// Each place of the app in each language: its own words, no fault, nothing wider than a phone; and at once when chosen.
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { LANGUAGES } from '../../src/languages/index.ts';
import { hashOf, PLACE_NAMES } from '../../src/web/place-names.ts';
import { DESKTOP, PHONE, startApp } from './app.ts';
import { faultsOf } from './faults.ts';
import { CHILD, redForOrange, TODAY, weeksOfRecords } from './growth-records.ts';
import { putEntries } from './kept-entries.ts';
import { SIGNS } from './place-signs.ts';

const app = startApp();

/** The app in a language, at Make, with a child of many records. */
async function openIn(language: string, options = {}): Promise<Page> {
  const page = await app.open('record', { waitFor: 'record', ...options });
  await page.clock.setFixedTime(new Date(`${TODAY}T09:00`));
  await putEntries(page, [CHILD, ...weeksOfRecords(), ...redForOrange()]);
  await page.evaluate(
    ([child, tag]) => {
      localStorage.setItem('samewise.child.real', child ?? '');
      localStorage.setItem('samewise.language', tag ?? '');
    },
    [CHILD.kind === 'child' ? CHILD.child : '', language],
  );
  await page.goto(`${app.address()}${hashOf('make')}`);
  await page.reload();
  await page.locator(SIGNS.make).first().waitFor();
  return page;
}

describe.each(LANGUAGES.filter((language) => language !== 'en'))('%s', (language) => {
  test.each([
    ['light', PHONE],
    ['dark', DESKTOP],
  ] as const)(
    'no place has a fault or runs over the edge, %s, %o',
    async (colorScheme, viewport) => {
      const page = await openIn(language, { colorScheme, viewport });
      for (const place of PLACE_NAMES) {
        await page.evaluate((hash) => {
          location.hash = hash;
        }, hashOf(place));
        await page.locator(SIGNS[place]).first().waitFor();
        expect(await faultsOf(page), place).toEqual([]);
        const width = await page.evaluate(() => document.documentElement.scrollWidth);
        expect(width, place).toBeLessThanOrEqual(viewport.width);
      }
      const html = page.locator('html');
      expect(await html.getAttribute('lang')).toBe(language);
      expect(await html.getAttribute('dir')).toBe(language === 'ar' ? 'rtl' : 'ltr');
    },
  );
});

test('a language is chosen at the foot, and app, page and description speak it at once', async () => {
  const page = await app.open('seed=7');
  const choice = page.locator('.language select');
  for (const [language, word] of [
    ['es', 'recuadros'],
    ['hi', 'डिब्बे'],
    ['ar', 'صناديق'],
  ] as const) {
    await choice.selectOption(language);
    await page.locator(`html[lang="${language}"]`).waitFor();
    await page.locator(`.sheet [data-role="task"][aria-label*="${word}"]`).first().waitFor();
  }
});
