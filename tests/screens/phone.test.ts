// On a small phone everything is there, and nothing sticks out.
import { expect, test } from 'vitest';
import { choiceOf, drawn, drawnAnew, PHONE, startApp } from './app.ts';

const app = startApp();
const TOUCH = { viewport: PHONE, hasTouch: true, isMobile: true };

test('nothing makes a phone scroll sideways', async () => {
  const page = await app.open('seed=7&tasks=99', { ...TOUCH, waitFor: 'objection' });
  await page.getByRole('button', { name: 'More choices' }).tap();
  const width = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(width).toBe(PHONE.width);
});

test('the page and the next thing to do are in view at once', async () => {
  const page = await app.open('seed=7', TOUCH);
  for (const part of [page.locator('.paper'), page.getByRole('button', { name: 'Get the PDF' })]) {
    const box = await part.boundingBox();
    expect((box?.y ?? 0) + (box?.height ?? PHONE.height)).toBeLessThanOrEqual(PHONE.height);
  }
});

test('a choice is made by touch', async () => {
  const page = await app.open('seed=7', TOUCH);
  const before = await drawn(page);
  await choiceOf(page, 'Step').tap();
  await page.getByRole('option', { name: /^step 3/ }).tap();
  await drawnAnew(page, before);
});

test('what is touched is at least 24 px wide and high', async () => {
  const page = await app.open('seed=7', TOUCH);
  await page.getByRole('button', { name: 'More choices' }).tap();
  const targets = await page.locator('button:visible, .number:visible, label:visible').all();
  for (const target of targets) {
    const box = await target.boundingBox();
    const name = (await target.textContent()) ?? '';
    expect(Math.min(box?.width ?? 0, box?.height ?? 0), name).toBeGreaterThanOrEqual(24);
  }
});
