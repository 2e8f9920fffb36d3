// Only with what the house has: the switch on Make, and what sheets take against what there is on Make, Today and Week.
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { Entry, StickerStock } from '../../src/records/index.ts';
import { DEFAULT_PAGE, makeSheet, packMaterials, readCode } from '../../src/sheets/index.ts';
import { childEntry, idAt } from '../record-entries.ts';
import { codeOf, DESKTOP, PHONE, startApp } from './app.ts';
import { faultsOf } from './faults.ts';
import { putEntries } from './kept-entries.ts';

const app = startApp();
const RECIPE = 'activity=copy-pattern&step=3&sheets=2&seed=7&with.response=sticker';
const SWITCH = 'Only with what you have';

const stickersOf = (count: number): readonly StickerStock[] =>
  (['red', 'blue', 'green'] as const).map((colour) => ({ colour, diameterMm: 10, count }));

function counted(stickers: readonly StickerStock[], printer: 'colour' | 'none' = 'colour'): Entry {
  return {
    ...{ id: idAt(9), at: 9, kind: 'stock', stickers, crayons: ['red'], tools: ['pencil'] },
    printer,
  };
}

/** A first visit whose house was counted before the recipe is opened. */
async function openMake(
  stickers: readonly StickerStock[],
  recipe = RECIPE,
  options: Parameters<typeof app.open>[1] = {},
): Promise<Page> {
  const page = await app.open('record', { ...options, waitFor: 'record' });
  await putEntries(page, [childEntry(1, 1, { nickname: 'Fern' }), counted(stickers)]);
  await page.goto(`${app.address()}?made#${recipe}`);
  await page.locator('.uses, .desk .objection:visible').first().waitFor();
  return page;
}

async function turnOn(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'More choices' }).click();
  await page.getByRole('switch', { name: SWITCH }).press('Space');
}

test('where nothing was counted the switch is off, says why and leads to Supplies', async () => {
  const page = await app.open(RECIPE);
  await page.getByRole('button', { name: 'More choices' }).click();
  await page.getByText('Nothing was counted yet').waitFor();
  expect(await page.getByRole('switch', { name: SWITCH }).isDisabled()).toBe(true);
  expect(await page.locator('.uses').count()).toBe(0);
  await page.getByRole('link', { name: 'Count what is in the house' }).click();
  await page.getByRole('heading', { name: 'What is in the house' }).waitFor();
});

test('the switch makes the pack of the colours and the size that were counted, and is kept in the address', async () => {
  const page = await openMake(stickersOf(90));
  const before = await codeOf(page);
  await page.locator('.uses strong').first().waitFor();
  await turnOn(page);
  await page.waitForFunction(() => document.querySelector('.uses strong') === null);
  expect(page.url()).toContain('atHand=true');
  expect(page.url()).not.toContain('stickers');
  await expect.poll(() => codeOf(page)).not.toBe(before);
  const read = readCode(await codeOf(page));
  if (!read.ok) throw new Error('no code');
  expect(read.value.values.stickerMm).toBe('10');
  for (const line of await page.locator('.uses li').allTextContents()) {
    expect(line).toMatch(/^(red|blue|green) stickers, 10\u00a0mm: \d+ of 90$/);
  }
  const kept = await codeOf(page);
  await page.reload();
  await page.locator('.uses').waitFor();
  await expect.poll(() => codeOf(page)).toBe(kept);
});

test('what cannot be had is refused in a sentence that says what would do, and nothing is lost', async () => {
  const page = await openMake(stickersOf(1));
  const before = await codeOf(page);
  await turnOn(page);
  const objection = page.getByText(/^Only with what you have: 2 sheets need \d+ stickers of 10 mm/);
  await objection.waitFor();
  expect(await objection.textContent()).toMatch(
    /the house has 3 stickers of 10 mm.*Add \d+ stickers/,
  );
  expect(await codeOf(page)).toBe(before);
  await page.getByRole('switch', { name: SWITCH }).press('Space');
  await objection.waitFor({ state: 'detached' });
  expect(await codeOf(page)).toBe(before);
});

test('a kept day that lacks something says so in words, with what it takes of what there is', async () => {
  const made = makeSheet({
    ...{ activity: 'in-every-box', step: 2, values: { response: 'sticker' }, seed: 4, tasks: 2 },
    ...{ page: DEFAULT_PAGE, print: 'colour' },
  });
  if (!made.ok) throw new Error('no sheet');
  const [sticker] = packMaterials([made.value]).stickers;
  if (!sticker) throw new Error('no stickers');
  const page = await app.open('record', { waitFor: 'record' });
  // The week in view may be the next one: a sheet lies on every day until then.
  const days = await page.evaluate(() => {
    const form = new Intl.DateTimeFormat('sv-SE');
    return Array.from({ length: 9 }, (_, place) => {
      const day = new Date();
      day.setDate(day.getDate() + place);
      return form.format(day);
    });
  });
  const { code } = made.value;
  const plans = days.map(
    (day, place): Entry => ({
      ...{ id: idAt(10 + place), at: Date.now(), kind: 'plan', child: idAt(1), day },
      sheets: [{ code, why: 'asked' }],
    }),
  );
  const stock = counted([{ ...sticker, count: 0 }]);
  await putEntries(page, [childEntry(1, 1, { nickname: 'Fern' }), ...plans, stock]);
  await page.goto(`${app.address()}?day#today`);
  await page.getByText('By the last count of your supplies you lack').waitFor();
  const first = page.locator('.uses li').first();
  expect(await first.textContent()).toBe(
    `${sticker.colour} stickers, ${sticker.diameterMm}\u00a0mm: ${sticker.count} of 0, ${sticker.count} missing`,
  );
  await page.getByRole('button', { name: 'Wishes for plans' }).click();
  await page.getByText('What is in the house was counted').waitFor();
  await page.getByRole('link', { name: 'Week' }).click();
  await page.locator('.on-paper .uses li').first().waitFor();
});

test.each([PHONE, DESKTOP])(
  'what the pack takes fits on Make, $width px wide',
  async (viewport) => {
    const page = await openMake(stickersOf(6), RECIPE, { viewport });
    await page.locator('.uses strong').first().waitFor();
    expect(await faultsOf(page)).toEqual([]);
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(width).toBeLessThanOrEqual(viewport.width);
    if (process.env.SHOTS) {
      await page.getByRole('button', { name: 'More choices' }).click();
      await page.screenshot({ path: `out/at-hand-make-${viewport.width}.png`, fullPage: true });
      await page.getByRole('switch', { name: SWITCH }).press('Space');
      await page.waitForTimeout(1500);
      await page.screenshot({ path: `out/at-hand-refused-${viewport.width}.png`, fullPage: true });
      for (const place of ['Today', 'Supplies', 'Week']) {
        await page.getByRole('link', { name: place, exact: true }).click();
        if (place === 'Week') await page.getByRole('button', { name: 'Plan the week' }).click();
        await page.waitForTimeout(8000);
        await page.screenshot({
          path: `out/at-hand-${place}-${viewport.width}.png`,
          fullPage: true,
        });
      }
    }
  },
);

test('a house without a printer is told of making by hand, until that is chosen', async () => {
  const page = await app.open('record', { waitFor: 'record' });
  await putEntries(page, [childEntry(1, 1, { nickname: 'Fern' }), counted(stickersOf(90), 'none')]);
  await page.goto(`${app.address()}?made#${RECIPE}`);
  const hint = page.getByText('there is no printer in the house');
  await hint.waitFor();
  await page.getByRole('radio', { name: 'made by hand' }).click();
  await hint.waitFor({ state: 'detached' });
});

test('dots that an adult sticks on half-made sheets are counted', async () => {
  const page = await openMake(stickersOf(90), `${RECIPE}&with.content=colours`);
  const before = await page.locator('.uses').textContent();
  await page.getByRole('radio', { name: 'half-made' }).click();
  await page.waitForFunction((old) => document.querySelector('.uses')?.textContent !== old, before);
});
