// The app in Arabic: what lies over a mirrored page lies over its figures, and all runs the way that one reads.
import type { Page } from 'playwright-core';
import { beforeAll, expect, test } from 'vitest';
import { loadCatalogue } from '../../src/languages/index.ts';
import type { PlaceName } from '../../src/web/place-names.ts';
import { loadAllScripts } from '../outside/script-fonts.ts';
import { DESKTOP, drawn, drawnAnew, type OpenOptions, PHONE, startApp } from './app.ts';
import { faultsOf, WCAG } from './faults.ts';
import { codeOfElsewhere, codeOfSheet } from './record-parts.ts';
import { photoOf } from './scan-pictures.ts';
import { openInLanguage, placeThere } from './spoken-places.ts';

beforeAll(async () => {
  await loadCatalogue('ar');
  await loadAllScripts();
});

const app = startApp();

const ODD = codeOfElsewhere();
const BOXES = 'activity=in-every-box&step=6&seed=5&sheets=3';
const NEAR_PX = 4;

/** The app in Arabic with a child of many records. */
function openArabic(options: OpenOptions = {}): Promise<Page> {
  return openInLanguage(app, 'ar', 'record', options);
}

async function goTo(page: Page, place: PlaceName, recipe = ''): Promise<void> {
  await page.goto(`${app.address()}#${recipe || place}`);
  await page.reload();
  await placeThere(page, place);
}

/** How far the middle of each thing that lies over the page is from that of its own figure, in px, task by task. */
function apart(page: Page, over: string, drawnAt: string): Promise<readonly number[]> {
  return page.evaluate(
    ([over = '', drawnAt = '']) => {
      const middle = (element: Element) => {
        const { x, y, width, height } = element.getBoundingClientRect();
        return [x + width / 2, y + height / 2] as const;
      };
      const tasks = Array.from(document.querySelectorAll('.sheet [data-role="task"]'));
      const bars = Array.from(document.querySelectorAll('.task-targets'));
      return tasks.flatMap((task, index) => {
        const figures = Array.from(task.querySelectorAll(drawnAt), middle);
        const targets = Array.from(bars[index]?.querySelectorAll(over) ?? [], middle);
        return figures.map(([x, y], place) => {
          const [atX = Number.NaN, atY = Number.NaN] = targets[place] ?? [];
          return Math.hypot(x - atX, y - atY);
        });
      });
    },
    [over, drawnAt],
  );
}

async function untilOver(page: Page, over: string, drawnAt: string): Promise<void> {
  await expect
    .poll(async () => {
      const all = await apart(page, over, drawnAt);
      return all.length > 5 && all.every((px) => px < NEAR_PX);
    })
    .toBe(true);
}

/** Where the middle of an element lies across the screen, in px. */
async function acrossOf(page: Page, selector: string): Promise<number> {
  const box = await page.locator(selector).first().boundingBox();
  return (box?.x ?? Number.NaN) + (box?.width ?? Number.NaN) / 2;
}

const focused = (page: Page) =>
  page.evaluate(() => document.activeElement?.getBoundingClientRect().x ?? Number.NaN);

test.each([
  ['by mouse', { viewport: DESKTOP }],
  ['on a small phone', { viewport: PHONE, hasTouch: true, isMobile: true }],
])(
  'what is tapped in Record lies over the mirrored figures %s, whole and bigger',
  async (_, how) => {
    const page = await openArabic(how);
    await page.locator('.code-line-in').fill(ODD);
    await page.locator('.target').first().waitFor();
    await untilOver(page, '.target', '[data-mark]');
    await page.locator('.tap-help button').click();
    await untilOver(page, '.target', '[data-mark]');
    const wrong = page.locator('.task-targets').nth(1).locator('.target[aria-pressed]').first();
    await wrong.click();
    expect(await wrong.getAttribute('aria-pressed')).toBe('true');
  },
);

test('arrow keys go from figure to figure the way that they point', async () => {
  const page = await openArabic();
  await page.locator('.code-line-in').fill(ODD);
  await page.locator('.target').first().waitFor();
  await untilOver(page, '.target', '[data-mark]');
  await page.locator('.target').first().focus();
  const first = await focused(page);
  await page.keyboard.press('ArrowLeft');
  const second = await focused(page);
  expect(second).toBeLessThan(first);
  await page.keyboard.press('ArrowRight');
  expect(await focused(page)).toBe(first);
});

test('the photo of a mirrored page is read', async () => {
  const page = await openArabic();
  const choosing = page.waitForEvent('filechooser');
  await page.locator('.scan button').nth(1).click();
  const buffer = photoOf(ODD, { turn: 4, dark: 0.2 }, 'ar');
  await (await choosing).setFiles({ name: 'photo.png', mimeType: 'image/png', buffer });
  await page.waitForFunction(
    (code) => document.querySelector<HTMLInputElement>('.code-line-in')?.value === code,
    ODD,
  );
});

test('what is changed on a page lies over the mirrored figures and boxes', async () => {
  const page = await openArabic();
  await goTo(page, 'make', BOXES);
  await page.locator('.change-toggle').click();
  await page.locator('.whole-target').first().waitFor();
  await untilOver(page, '.change-target', '[data-place]');
  await untilOver(page, '.whole-frame', '[data-role="box"]');
  const before = await page.locator('.change-place .sheet').innerHTML();
  await page.locator('.change-target').first().click();
  await page.locator('.change-offer[aria-pressed="false"]').first().click();
  await page.waitForFunction(
    (was) => document.querySelector('.change-place .sheet')?.innerHTML !== was,
    before,
  );
  await page.keyboard.press('Escape');
  await untilOver(page, '.change-target', '[data-place]');
  expect(await faultsOf(page, WCAG)).toEqual([]);
});

test('the next sheet and the next week are at the left, and their arrows point there', async () => {
  const page = await openArabic();
  await goTo(page, 'make', BOXES);
  const [before, next] = ['.pager .turn:first-child', '.pager .turn:last-child'];
  expect(await acrossOf(page, next)).toBeLessThan(await acrossOf(page, before));
  // Arrows are not turned round by the text itself.
  const scales = await page
    .locator('.pager .turn')
    .evaluateAll((all) => all.map((each) => getComputedStyle(each).scale));
  expect(scales).toEqual(['-1 1', '-1 1']);
  const first = await drawn(page);
  await page.locator(next).click();
  const second = await drawnAnew(page, first);
  await page.locator(before).click();
  expect(await drawnAnew(page, second)).toBe(first);
  await goTo(page, 'week');
  const turns = await page
    .locator('.week-bar button')
    .evaluateAll((all) =>
      all.map((each) => [each.getBoundingClientRect().x, each.textContent?.trim()] as const),
    );
  const [back, forth] = [
    turns.find(([, sign]) => sign === '‹'),
    turns.find(([, sign]) => sign === '›'),
  ];
  expect(forth?.[0]).toBeLessThan(back?.[0] ?? Number.NaN);
});

test('the browser prints mirrored pages', async () => {
  const page = await openArabic();
  await goTo(page, 'make', BOXES);
  await page.evaluate(() => {
    window.print = () => {
      document.title = `printed ${document.querySelectorAll('#printed svg').length}`;
    };
  });
  await page.locator('.press button:not(.next)').first().click();
  await page.waitForFunction(() => /^printed [1-9]/.test(document.title));
  const codes = await page.locator('#printed').evaluate((printed) => {
    const shown = printed as HTMLElement;
    shown.style.display = 'block';
    return Array.from(shown.querySelectorAll('svg')).flatMap((svg) => {
      const { x, width } = svg.getBoundingClientRect();
      const qr = svg.querySelector('[data-role="qr"]')?.getBoundingClientRect();
      return qr ? [(qr.x + qr.width / 2 - x) / width] : [];
    });
  });
  expect(codes.length).toBe(3);
  for (const share of codes) expect(share).toBeLessThan(0.2);
});

test('codes keep the order of their groups', async () => {
  const page = await openArabic();
  await goTo(page, 'make', BOXES);
  const directions = await page
    .locator('.code')
    .evaluateAll((all) => all.map((each) => getComputedStyle(each).direction));
  expect(directions).toEqual(['ltr']);
  await goTo(page, 'record');
  const field = page.locator('.code-line-in');
  expect(await field.evaluate((each) => getComputedStyle(each).direction)).toBe('ltr');
});

test('on a small phone a mirrored sheet that is recorded keeps to the screen and has no fault', async () => {
  const page = await openArabic({ viewport: PHONE });
  await goTo(page, 'record');
  await page.locator('.code-line-in').fill(codeOfSheet('by-key', 2));
  await page.locator('.target').first().waitFor();
  expect(await page.locator('html').getAttribute('dir')).toBe('rtl');
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(PHONE.width);
  await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight));
  expect(await faultsOf(page, WCAG)).toEqual([]);
});
