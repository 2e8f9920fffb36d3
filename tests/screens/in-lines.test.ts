// Where lines of what is said end on a small phone.
import type { Locator } from 'playwright-core';
import { expect, test } from 'vitest';
import { PHONE, startApp } from './app.ts';

const app = startApp();

/** On how many lines it stands. */
function linesOf(place: Locator): Promise<number> {
  return place.evaluate((element) => {
    const range = document.createRange();
    range.selectNodeContents(element);
    return new Set(Array.from(range.getClientRects()).map(({ bottom }) => Math.round(bottom))).size;
  });
}

test.each(['en-GB', 'es-ES', 'hi-IN'])(
  'in %s the name of a saved file is not broken at its hyphens',
  async (locale) => {
    const page = await app.open('seed=7&step=3&sheets=2', { viewport: PHONE, locale });
    await page.locator('.press .next').click();
    const name = page.locator('.file-name');
    await name.waitFor();
    expect(await name.textContent()).toBe('in-every-box-step-3-2-sheets-A4-7.pdf');
    expect(await linesOf(name)).toBe(1);
  },
);

/** The words of places of the recipe whose comma or full stop stands on a line of its own. */
function marksThatBegin(places: readonly Element[]): readonly string[] {
  return places.flatMap((place) => {
    const mark = place.lastChild;
    if (!(mark instanceof Text)) return [];
    const range = document.createRange();
    range.selectNodeContents(mark);
    const own = range.getClientRects()[0];
    const before = Array.from(mark.previousElementSibling?.querySelectorAll('*') ?? [])
      .flatMap((each) => Array.from(each.getClientRects()))
      .filter(({ width }) => width > 0);
    const isBeside = before.some((each) => own && each.bottom > own.top && each.top < own.bottom);
    return isBeside ? [] : [place.textContent ?? ''];
  });
}

test.each(['en-GB', 'es-ES', 'hi-IN', 'ar'])(
  'in %s no line of the recipe begins with a comma, nor after a refusal in it',
  async (locale) => {
    const recipe = 'seed=7&tasks=99&paper=A0&step=77&sheets=0';
    const options = { viewport: PHONE, locale, waitFor: 'objection' } as const;
    const page = await app.open(recipe, options);
    // What a line has room for differs from phone to phone.
    for (let width = 320; width <= 420; width += 4) {
      await page.setViewportSize({ ...PHONE, width });
      expect(await page.locator('.sentence .with-mark').evaluateAll(marksThatBegin)).toEqual([]);
    }
  },
);
