// A link to a recipe comes from anybody: whatever stands in it, it is told in words, nothing runs and nothing hangs.
import { expect, test } from 'vitest';
import { drawn, startApp } from './app.ts';

const app = startApp();
const SCRIPT = '<img src=x onerror=alert(1)><script>alert(1)</script>';
const LONG = 'x'.repeat(100_000);

/** What a stranger may write after the `#`, by what it tries. */
const LINKS: Readonly<Record<string, string>> = {
  'markup as the activity': `activity=${encodeURIComponent(SCRIPT)}`,
  'markup as a value': `seed=7&with.content=${encodeURIComponent(SCRIPT)}`,
  'markup as the name of a parameter': `seed=7&with.${encodeURIComponent(SCRIPT)}=1`,
  'an address that runs': 'activity=javascript:alert(1)&paper=javascript:alert(1)',
  'names that every object has': 'activity=__proto__&with.__proto__=1&with.constructor=true',
  'an activity that every object has': 'activity=constructor',
  'a parameter that every object has': 'seed=7&with.toString=1',
  'numbers without measure': 'seed=1e308&step=-1&sheets=1e99&tasks=Infinity',
  'numbers that are none': 'seed=NaN&step=abc&sheets=',
  'half a percent sign': 'activity=%E0%A4%A&seed=%',
  'half of a pair of surrogates': 'activity=%ED%A0%80&seed=7',
  'a very long word': `activity=${LONG}`,
  'very many colours': `seed=7&colours=${'red,'.repeat(20_000)}`,
  'very many changes': `seed=7&changed=${'AAAA-AAAA,'.repeat(10_000)}`,
  'very many parameters': `seed=7&${Array.from({ length: 5_000 }, (_, at) => `with.p${at}=1`).join('&')}`,
  'everything twice': 'seed=7&seed=8&step=1&step=99&activity=by-key&activity=in-every-box',
};

test.each(Object.entries(LINKS))('%s: nothing runs, and one can go on', async (_, link) => {
  const page = await app.blank();
  const bad: string[] = [];
  page.on('dialog', (dialog) => {
    bad.push(`dialog ${dialog.message()}`);
    void dialog.dismiss();
  });
  page.on('pageerror', (error) => bad.push(`error ${error.message}`));
  page.on('request', (request) => {
    if (!/^(blob|data):/.test(request.url()) && !request.url().startsWith(app.address())) {
      bad.push(`request ${request.url()}`);
    }
  });
  await page.goto(`${app.address()}#${link}`);
  await page.locator('.objection:visible, .sheet svg').first().waitFor();
  expect(await page.locator('main img, main script').count()).toBe(0);
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
  await page.evaluate(() => {
    location.hash = 'seed=7';
  });
  await page.locator('.objection:visible').first().waitFor({ state: 'detached' });
  expect(await drawn(page)).toContain('<svg');
  expect(bad).toEqual([]);
});

test('where no page can be made, its place says so instead of that it is being made', async () => {
  const page = await app.open('seed=7&step=77', { waitFor: 'objection' });
  await page.getByText('No page yet: the recipe asks for something that cannot be made.').waitFor();
});
