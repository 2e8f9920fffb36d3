// No fault that axe-core finds by the rules of WCAG 2.2 A and AA, by day and night, wide and narrow.
import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { choiceOf, DESKTOP, PHONE, startApp } from './app.ts';

const app = startApp();
const WCAG = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
const ALL_RULES = [...WCAG, 'best-practice'];

async function faultsOf(
  page: Page,
  rules: readonly string[] = ALL_RULES,
): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  // What comes in is looked at once it has come.
  await page.evaluate(() => Promise.all(document.getAnimations().map((each) => each.finished)));
  const found = await page.evaluate(
    (tags) => (window as unknown as { axe: typeof axe }).axe.run({ runOnly: tags }),
    [...rules],
  );
  return found.violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`,
  );
}

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
