import { describe, expect, test } from 'vitest';
import { LANGUAGES } from '../../src/languages/index.ts';
import { hashOf, PLACE_NAMES } from '../../src/web/place-names.ts';
import { DESKTOP, PHONE, startApp } from './app.ts';
import { faultsOf } from './faults.ts';
import { openInLanguage, placeThere } from './spoken-places.ts';

const app = startApp();

describe.each(LANGUAGES.filter((language) => language !== 'en'))('%s', (language) => {
  test.each([
    ['light', PHONE],
    ['dark', DESKTOP],
  ] as const)(
    'no place has a fault or runs over the edge, %s, %o',
    async (colorScheme, viewport) => {
      const page = await openInLanguage(app, language, 'make', { colorScheme, viewport });
      for (const place of PLACE_NAMES) {
        await page.evaluate((hash) => {
          location.hash = hash;
        }, hashOf(place));
        await placeThere(page, place);
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
