// No fault that axe-core finds by the rules of WCAG 2.2 A and AA, by day and night, wide and narrow.
import { describe, expect, test } from 'vitest';
import { choiceOf, DESKTOP, PHONE, startApp } from './app.ts';
import { faultsOf, WCAG } from './faults.ts';

const app = startApp();

describe.each([
  ['light', DESKTOP],
  ['dark', DESKTOP],
  ['light', PHONE],
  ['dark', PHONE],
] as const)('in %s surroundings at %o', (colorScheme, viewport) => {
  test('the screen at rest has no fault', async () => {
    const page = await app.open('seed=7&step=5', { colorScheme, viewport });
    expect(await faultsOf(page)).toEqual([]);
  });

  test('with more choices and a refusal it has no fault', async () => {
    const page = await app.open('tasks=99', { colorScheme, viewport, waitFor: 'objection' });
    await page.getByRole('button', { name: 'More choices' }).click();
    expect(await faultsOf(page)).toEqual([]);
  });

  test('an open list and the form for a code have no fault', async () => {
    // What opens over the page lies outside its landmarks, which only the advice beyond WCAG minds.
    const page = await app.open('seed=7', { colorScheme, viewport });
    await choiceOf(page, 'Step').click();
    await page.getByRole('listbox').waitFor();
    expect(await faultsOf(page, WCAG)).toEqual([]);
    await page.keyboard.press('Escape');
    await page.getByRole('button', { name: 'Open by code' }).click();
    await page.getByRole('dialog').waitFor();
    expect(await faultsOf(page, WCAG)).toEqual([]);
  });
});

test('the page names its language, and the proof is told as it changes', async () => {
  const page = await app.open('seed=7');
  expect(await page.locator('html').getAttribute('lang')).toBe('en');
  expect(await page.locator('.proof').getAttribute('aria-live')).toBe('polite');
});
