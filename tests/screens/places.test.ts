// The places of the app: where addresses lead, and that all of them can be reached on a small phone.
import { expect, test } from 'vitest';
import { drawn, PHONE, startApp } from './app.ts';

const app = startApp();

/** As many links as the app can come to have, whichever of them are there. */
const ALL_PLACES = ['Today', 'Make', 'Week', 'Record', 'Growth', 'Supplies'];

test('the place one is at is named in the title and among the links', async () => {
  const page = await app.open('record', { waitFor: 'record' });
  expect(await page.title()).toBe('Record · Samewise');
  const current = page.locator('nav a[aria-current="page"]');
  expect(await current.allTextContents()).toEqual(['Record']);
  await page.getByRole('link', { name: 'Make' }).click();
  await drawn(page);
  expect(await page.title()).toBe('Samewise');
  expect(await current.allTextContents()).toEqual(['Make']);
});

test('Make begins at its name, keeps its recipe in the address, and Back leads where one was', async () => {
  const page = await app.open('record', { waitFor: 'record' });
  await page.getByRole('link', { name: 'Make' }).click();
  await drawn(page);
  expect(new URL(page.url()).hash).toContain('seed=');
  await page.goBack();
  await page.getByRole('button', { name: 'Add a child' }).waitFor();
  await page.goForward();
  await drawn(page);
});

test('all places fit a phone, and the page and the next thing to do are still in view at once', async () => {
  const page = await app.open('seed=7', { viewport: PHONE, hasTouch: true, isMobile: true });
  await page.evaluate((names) => {
    const nav = document.querySelector('nav');
    const there = Array.from(document.querySelectorAll('nav a'), (link) => link.textContent);
    for (const name of names.filter((name) => !there.includes(name))) {
      const link = document.createElement('a');
      link.href = `#${name.toLowerCase()}`;
      link.textContent = name;
      nav?.append(link);
    }
  }, ALL_PLACES);
  const links = await page.locator('nav a').all();
  expect(links).toHaveLength(ALL_PLACES.length);
  const boxes = await Promise.all(links.map((link) => link.boundingBox()));
  for (const box of boxes) {
    if (box === null) throw new Error('a place is not to be seen');
    expect(box.x).toBeGreaterThanOrEqual(0);
    expect(box.x + box.width).toBeLessThanOrEqual(PHONE.width);
    expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(24);
  }
  expect(new Set(boxes.map((box) => box?.y)).size).toBe(1);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(PHONE.width);
  for (const part of [page.locator('.paper'), page.getByRole('button', { name: 'Get the PDF' })]) {
    const box = await part.boundingBox();
    expect((box?.y ?? 0) + (box?.height ?? PHONE.height)).toBeLessThanOrEqual(PHONE.height);
  }
});
