// Editing the recipe in its sentence: each bold word changes the page.
import { describe, expect, test } from 'vitest';
import { activityOf } from '../../src/activities/index.ts';
import { choiceOf, drawn, drawnAnew, labelOf, startApp } from './app.ts';

const app = startApp();
const RECIPE = 'activity=in-every-box&step=3&tasks=2&seed=7';
const ROOMY = 'activity=in-every-box&step=3&tasks=1&seed=7';

describe.each([
  ['Activity', /^by /],
  [labelOf('content'), /^shapes$/],
  [labelOf('response'), 'draws a ring'],
  ['Age of the child', 'five'],
  ['Step', 'step 5'],
  ['Paper', 'Letter'],
  ['How the paper lies', 'sideways'],
  ['Printed in', 'grey'],
] as const)('%s', (label, choice) => {
  test('is chosen in the sentence, and the page follows', async () => {
    const page = await app.open(RECIPE);
    const before = await drawn(page);
    await choiceOf(page, label).click();
    await page.getByRole('option', { name: choice }).click();
    expect(await drawnAnew(page, before)).not.toBe(before);
    await page.getByText('has exactly one answer').waitFor();
  });
});

test('a number is typed in the sentence, and the page follows', async () => {
  const page = await app.open(RECIPE);
  const before = await drawn(page);
  const tasks = page.getByRole('textbox', { name: 'Tasks on a sheet' });
  await tasks.fill('1');
  await tasks.press('Enter');
  await drawnAnew(page, before);
  expect(await page.locator('.sheet [data-role="task"]').count()).toBe(1);
});

test('more sheets make a longer pack, and its sheets can be paged through', async () => {
  const page = await app.open(`${RECIPE}&sheets=2`);
  const first = await drawn(page);
  await page.getByText('sheet 1 of 2').waitFor();
  const sheets = page.getByRole('textbox', { name: 'Sheets' });
  await sheets.fill('12');
  await sheets.press('Enter');
  await page.getByText('sheet 1 of 12').waitFor();
  await page.getByRole('button', { name: 'Next sheet' }).click();
  expect(await drawnAnew(page, first)).not.toBe(first);
  await page.getByText('sheet 2 of 12').waitFor();
});

test('more choices stand in sentences of their own and change the page', async () => {
  const page = await app.open(ROOMY);
  const before = await drawn(page);
  await page.getByRole('button', { name: 'More choices' }).click();
  const boxes = page.getByRole('textbox', { name: labelOf('boxes'), exact: true });
  await boxes.fill(String(Number(await boxes.inputValue()) + 1));
  await boxes.press('Enter');
  await drawnAnew(page, before);
  await page.getByText('Changed from what this step asks for: boxes.').waitFor();
});

test('what the step asks for gives way to what was set, and that is said', async () => {
  const page = await app.open('activity=copy-pattern&step=1&seed=7');
  const before = await drawn(page);
  const { content, response } = activityOf('copy-pattern').words.en.parameters;
  await choiceOf(page, content?.label ?? '').click();
  await page.getByRole('option', { name: content?.choices?.lines ?? '', exact: true }).click();
  await drawnAnew(page, before);
  await page.getByText(/^Fitted to your choices: /).waitFor();
  const answered = await choiceOf(page, response?.label ?? '').textContent();
  expect(answered).toBe(response?.choices?.['draw-line']);
});

test('what was set does not give way: it is refused beside itself', async () => {
  const page = await app.open(`${ROOMY}&with.response=sticker`);
  const before = await drawn(page);
  await choiceOf(page, 'Printed in').click();
  await page.getByRole('option', { name: /^grey/ }).click();
  await page.locator('.objection', { hasText: labelOf('response') }).waitFor();
  expect(await drawn(page)).toBe(before);
});

test('another like this, easier and harder turn to other sheets, and Back returns', async () => {
  const page = await app.open(RECIPE);
  const first = await drawn(page);
  await page.getByRole('button', { name: 'Another like this' }).click();
  const second = await drawnAnew(page, first);
  await page.getByRole('button', { name: 'One notch harder' }).click();
  const harder = await drawnAnew(page, second);
  await page.getByRole('button', { name: 'One notch easier' }).click();
  await drawnAnew(page, harder);
  await page.goBack();
  await page.waitForFunction(
    (markup) => document.querySelector('.sheet')?.innerHTML === markup,
    harder,
  );
});

test('what gets no easier says so, and the sheet stays', async () => {
  const page = await app.open('activity=odd-one-out&step=1&seed=7');
  const before = await drawn(page);
  await page.getByRole('button', { name: 'One notch easier' }).click();
  await page.getByText(/^It gets no easier/).waitFor();
  expect(await drawn(page)).toBe(before);
});

test('the goals of a curriculum stand on the adult’s page once they are chosen', async () => {
  const page = await app.open(RECIPE);
  const sheet = await drawn(page);
  await page.getByRole('radio', { name: 'Adult’s page' }).click();
  const without = await drawnAnew(page, sheet);
  await page.getByRole('button', { name: 'More choices' }).click();
  await page.getByRole('button', { name: 'Head Start, US 2015' }).click();
  await drawnAnew(page, without);
  expect(await page.locator('.sheet').getByLabel('Goals that the sheets serve').count()).toBe(1);
  expect(page.url()).toContain('goals=head-start');
});

test('the answers and the page for the adult can be looked at', async () => {
  const page = await app.open(RECIPE);
  const sheet = await drawn(page);
  await page.getByRole('radio', { name: 'Answers' }).click();
  const answers = await drawnAnew(page, sheet);
  expect(await page.locator('.answers li').count()).toBe(2);
  await page.getByRole('radio', { name: 'Adult’s page' }).click();
  await drawnAnew(page, answers);
  expect(await page.locator('.sheet').getByLabel('50 mm').count()).toBeGreaterThan(0);
});

test.each([320, 360, 1280, 1440])(
  'no comma or full stop begins a line, %d px wide',
  async (width) => {
    const viewport = { width, height: 800 };
    const page = await app.open('activity=by-key&step=5&seed=5&paper=A5&orientation=landscape', {
      viewport,
    });
    const loose = await page.locator('.sentence .with-mark').evaluateAll(
      (spans) =>
        spans.filter((span) => {
          const mark = span.lastChild;
          if (mark?.nodeType !== Node.TEXT_NODE) return false;
          const range = document.createRange();
          range.selectNodeContents(mark);
          const [its, all] = [range.getBoundingClientRect(), span.getBoundingClientRect()];
          return its.left - all.left < 4;
        }).length,
    );
    expect(loose).toBe(0);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      width,
    );
  },
);
