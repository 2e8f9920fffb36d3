// Only with the colours of a house: chosen by chips, kept in the address, and refused in plain words where too few.
import { expect, test } from 'vitest';
import { FIGURE_COLOURS, hexOf } from '../../src/palette/index.ts';
import { makeSheet, readCode } from '../../src/sheets/index.ts';
import { codeOf, DESKTOP, drawn, PHONE, startApp } from './app.ts';

const app = startApp();
const RECIPE = 'activity=in-every-box&step=1&tasks=2&seed=7&with.content=colours';
const CHOSEN = ['red', 'green', 'blue'] as const;

test.each([PHONE, DESKTOP])(
  'three chosen colours redraw the page with these alone, $width px wide',
  async (viewport) => {
    const page = await app.open(RECIPE, { viewport });
    const before = await drawn(page);
    await page.getByRole('button', { name: 'More choices' }).click();
    const chips = page.getByLabel('Only with these colours', { exact: true });
    for (const name of CHOSEN) await chips.getByRole('button', { name, exact: true }).click();
    expect(new URL(page.url()).hash).toContain('colours=red,green,blue');
    await page.waitForFunction(
      (others) => {
        const html = document.querySelector('.sheet')?.innerHTML ?? '';
        return html !== '' && !others.some((hex) => html.includes(hex));
      },
      FIGURE_COLOURS.filter((name) => name !== 'black' && name !== 'grey')
        .filter((name) => !CHOSEN.some((chosen) => chosen === name))
        .map(hexOf),
    );
    const html = await drawn(page);
    expect(html).not.toBe(before);
    expect(CHOSEN.some((name) => html.includes(hexOf(name)))).toBe(true);
    await page.getByText('has exactly one answer').waitFor();
  },
);

test('too few colours are refused in a plain sentence, and letting go of them draws again', async () => {
  const page = await app.open(`${RECIPE}&colours=green`, { waitFor: 'objection' });
  await page.getByText('only 1 colour is at hand').first().waitFor();
  await page.getByRole('button', { name: 'More choices' }).click();
  const green = page.getByLabel('Only with these colours', { exact: true }).getByRole('button', {
    name: 'green',
    exact: true,
  });
  expect(await green.getAttribute('aria-pressed')).toBe('true');
  await green.press('Space');
  await page.locator('.sheet svg').waitFor();
  expect(page.url()).not.toContain('colours=');
});

test('a name that is no colour is refused by name', async () => {
  const page = await app.open(`${RECIPE}&colours=red,mauve,blue`, { waitFor: 'objection' });
  await page.getByText('"mauve"').first().waitFor();
});

test('the page of chosen colours comes again from its code', async () => {
  const page = await app.open(`${RECIPE}&colours=red,green,blue&sheets=1`);
  const before = await drawn(page);
  const code = await codeOf(page);
  const read = readCode(code);
  expect(read.ok && read.value.colours).toEqual(CHOSEN);
  expect(read.ok && makeSheet(read.value)).toMatchObject({ value: { code } });
  expect(before).toContain(code);
});
