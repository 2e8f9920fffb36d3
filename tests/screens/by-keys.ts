// Going about the app with the keys alone.
import type { Page } from 'playwright-core';

const MOST_STOPS = 60;

/** Presses Tab until what has the focus is named as wanted; fails if it never comes. */
export async function tabTo(page: Page, name: RegExp): Promise<void> {
  const met: string[] = [];
  for (let stop = 0; stop < MOST_STOPS; stop++) {
    await page.keyboard.press('Tab');
    const focused = await page.evaluate(nameOfFocused);
    if (name.test(focused)) return;
    met.push(focused);
  }
  throw new Error(`${name} was not reached by Tab, but ${met.join(' | ')}`);
}

function nameOfFocused(): string {
  const element = document.activeElement;
  const labels = element instanceof HTMLInputElement ? Array.from(element.labels ?? []) : [];
  return [
    element?.getAttribute('aria-label') ?? '',
    ...labels.map((label) => label.textContent ?? ''),
    element?.textContent ?? '',
  ]
    .join(' ')
    .trim();
}
