// The main job without a mouse.
import { expect, test } from 'vitest';
import { drawn, drawnAnew, startApp } from './app.ts';
import { tabTo } from './by-keys.ts';

const app = startApp();
const MOST_STOPS = 40;

test('age, number of tasks and the PDF are reached, chosen and got by keyboard alone', async () => {
  const page = await app.open('seed=7');
  const first = await drawn(page);
  await tabTo(page, /Tasks on a sheet/);
  await page.keyboard.type('1');
  await page.keyboard.press('Enter');
  const second = await drawnAnew(page, first);
  await tabTo(page, /Age of the child/);
  await page.keyboard.press('Enter');
  await page.getByRole('listbox').waitFor();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await drawnAnew(page, second);
  await tabTo(page, /Get the PDF/);
  const saving = page.waitForEvent('download');
  await page.keyboard.press('Enter');
  expect((await saving).suggestedFilename()).toMatch(/\.pdf$/);
});

test('whatever has the focus shows it', async () => {
  const page = await app.open('seed=7');
  for (let stop = 0; stop < MOST_STOPS; stop++) {
    await page.keyboard.press('Tab');
    const ring = await page.evaluate(ringOfFocused);
    if (ring === undefined) return;
    expect(ring).toBeGreaterThanOrEqual(2);
  }
});

/** Width in px of the ring round what has the focus, or round the group it is edited in. */
function ringOfFocused(): number | undefined {
  const element = document.activeElement;
  if (element === null || element === document.body) return undefined;
  const ringed = element.closest('.number') ?? element;
  const { outlineStyle, outlineWidth } = getComputedStyle(ringed);
  return outlineStyle === 'none' ? 0 : Number.parseFloat(outlineWidth);
}
