// The faults that axe-core finds on a screen.
import axe from 'axe-core';
import type { Page } from 'playwright-core';

export const WCAG = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
const ALL_RULES = [...WCAG, 'best-practice'];

/** What axe-core finds on the page, once it has come to rest: by default with its advice beyond WCAG. */
export async function faultsOf(
  page: Page,
  rules: readonly string[] = ALL_RULES,
): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  // What comes in is looked at once it has come; what is replaced while it comes in is never finished.
  await page.evaluate(() =>
    Promise.allSettled(document.getAnimations().map((each) => each.finished)),
  );
  const found = await page.evaluate(
    (tags) => (window as unknown as { axe: typeof axe }).axe.run({ runOnly: tags }),
    [...rules],
  );
  return found.violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`,
  );
}
