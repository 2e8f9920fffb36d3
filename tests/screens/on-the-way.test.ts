// Between a press and its answer: nothing is done twice, nothing newer is lost, every fault is told, the focus stays.
import { Resvg } from '@resvg/resvg-js';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { choiceOf, drawn, drawnAnew, startApp } from './app.ts';
import { keptEntries } from './kept-entries.ts';
import { addChild } from './record-parts.ts';

const app = startApp();

/** What has the focus, by its words; empty where nothing has it. */
function focused(page: Page): Promise<string> {
  return page.evaluate(() =>
    document.activeElement === document.body ? '' : (document.activeElement?.textContent ?? ''),
  );
}

/** A page that is prepared before the app starts in it. */
async function opened(hash: string, prepare: () => void): Promise<Page> {
  const page = await app.blank();
  await page.addInitScript(prepare);
  await page.goto(`${app.address()}#${hash}`);
  return page;
}

async function sendTwice(page: Page, form: string): Promise<void> {
  await page.locator(form).evaluate((found) => {
    (found as HTMLFormElement).requestSubmit();
    (found as HTMLFormElement).requestSubmit();
  });
}

describe('a second press before the first is done', () => {
  test('adds no second child', async () => {
    const page = await app.open('record', { waitFor: 'record' });
    await page.getByRole('button', { name: 'Add a child' }).click();
    await page.getByRole('textbox', { name: 'Nickname' }).fill('Fern');
    await sendTwice(page, 'form.drawer-front');
    await page.getByText('Fern is saved.').waitFor();
    expect(await keptEntries(page)).toHaveLength(1);
  });

  test('keeps no second count of the house', async () => {
    const page = await app.open('record', { waitFor: 'record' });
    await addChild(page, 'Fern');
    await page.getByRole('link', { name: 'Supplies' }).click();
    await page.getByText('Nothing is counted yet.').waitFor();
    await sendTwice(page, 'form.count');
    await page.getByText('The count is saved.').waitFor();
    expect((await keptEntries(page)).map(({ kind }) => kind)).toEqual(['child', 'stock']);
  });
});

test('what is changed while a notch is looked for stays', async () => {
  const page = await opened('seed=7&step=3', () => {
    const post = Worker.prototype.postMessage;
    Worker.prototype.postMessage = function (this: Worker, message: { kind?: string }) {
      const send = () => post.call(this, message);
      if (message.kind === 'notch') Object.assign(window, { lookForNotch: send });
      else send();
    };
  });
  const before = await drawn(page);
  await page.getByRole('button', { name: 'One notch harder' }).click();
  await choiceOf(page, 'Paper').click();
  await page.getByRole('option', { name: 'Letter' }).click();
  const onLetter = await drawnAnew(page, before);
  await page.evaluate(() => (window as unknown as { lookForNotch: () => void }).lookForNotch());
  await drawnAnew(page, onLetter);
  expect(page.url()).toContain('paper=Letter');
});

test('where the records cannot be read Supplies says so, and the planner is not asked again and again', async () => {
  const page = await opened('supplies', () => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('no', 'SecurityError');
    };
    const post = Worker.prototype.postMessage;
    const asked: string[] = [];
    Object.assign(window, { asked });
    Worker.prototype.postMessage = function (this: Worker, message: { kind?: string }) {
      asked.push(message.kind ?? '');
      post.call(this, message);
    };
  });
  await page.locator('.fault').waitFor();
  await page.waitForTimeout(1000);
  const asked = await page.evaluate(() => (window as unknown as { asked: string[] }).asked);
  expect(asked.filter((kind) => kind === 'stock')).toEqual([]);
});

test('where the browser gives no clipboard it says how to copy the code', async () => {
  const page = await opened('seed=7', () => {
    Object.defineProperty(navigator, 'clipboard', { value: undefined });
  });
  await drawn(page);
  await page.getByRole('button', { name: 'Copy the code' }).click();
  await page.getByText('Mark the code and copy it by hand.').waitFor();
});

describe('a file that the browser cannot read, such as one that is gone by now', () => {
  const gone = () => {
    const fail = () => Promise.reject(new DOMException('gone', 'NotReadableError'));
    Blob.prototype.text = fail;
    Blob.prototype.arrayBuffer = fail;
  };
  const file = { name: 'pack.json', mimeType: 'application/json', buffer: Buffer.from('{}') };

  test('is told of as a pack file', async () => {
    const page = await opened('seed=7', gone);
    await drawn(page);
    await page.locator('.pack-file input[type="file"]').setInputFiles(file);
    await page.locator('.pack-file .objection', { hasText: 'could not read' }).waitFor();
  });

  test('is told of as a picture', async () => {
    const page = await opened('supplies', gone);
    await page.locator('.drop-place input[type=file]').setInputFiles(file);
    await page.locator('.picture-said', { hasText: 'could not read' }).waitFor();
  });
});

describe('the focus', () => {
  const SUN = Buffer.from(
    new Resvg(`<svg xmlns="http://www.w3.org/2000/svg" width="300" height="300">
    <rect width="300" height="300" fill="#f4efe4"/><circle cx="150" cy="150" r="90" fill="#ffd21f"/>
    <path d="M150 10v90M150 200v90" stroke="#e80" stroke-width="26"/></svg>`)
      .render()
      .asPng(),
  );

  test('stays at the switch by which a picture that was just kept comes on the sheets', async () => {
    const page = await app.open('activity=find-the-same&step=3&seed=7&with.content=pictures');
    await page.getByRole('button', { name: 'Own pictures' }).click();
    const input = page.locator('.drop-place input[type=file]');
    await input.setInputFiles({ name: 'sun.png', mimeType: 'image/png', buffer: SUN });
    await page.getByRole('button', { name: 'Keep the picture' }).click();
    await page.getByText(/^Kept on this device/).waitFor();
    const before = await drawn(page);
    await page.getByRole('button', { name: /^On the sheets/ }).click();
    await drawnAnew(page, before);
    expect(await focused(page)).toContain('On the sheets');
  });

  test('stays at the buttons of a pack while it is written, and after it was stopped', async () => {
    const page = await app.open('step=5&sheets=2000&seed=3');
    await page.getByRole('button', { name: 'Get the PDF' }).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('progressbar', { name: /of 2000$/ }).waitFor();
    expect(await focused(page)).toBe('Get the PDF');
    await page.getByRole('button', { name: 'Cancel' }).focus();
    await page.keyboard.press('Enter');
    await page.getByText('Stopped. Nothing was saved.').waitFor();
    expect(await focused(page)).toBe('Get the PDF');
  });

  test('goes on to the task once it is repaired', async () => {
    const page = await app.open('activity=in-every-box&step=6&seed=5&sheets=2');
    await page.getByRole('button', { name: 'Change this page' }).click();
    const targets = page.locator('.change-target');
    const label = await targets.first().getAttribute('aria-label');
    await targets.nth(1).click();
    await page.getByRole('button', { name: `Colour: ${label?.match(/: (\w+) /)?.[1]}` }).click();
    await page.getByRole('button', { name: /^Repair task 1/ }).focus();
    await page.keyboard.press('Enter');
    await page.locator('[data-state="uncertain"]').waitFor({ state: 'detached' });
    expect(await focused(page)).toBe('Draw the rest again');
  });

  test('goes to the next row, or to what adds one, when a row of stickers is taken out', async () => {
    const page = await app.open('record', { waitFor: 'record' });
    await addChild(page, 'Fern');
    await page.getByRole('link', { name: 'Supplies' }).click();
    await page.getByRole('button', { name: 'Add stickers' }).click();
    await page.getByRole('button', { name: 'Take out row 1' }).press('Enter');
    await page.getByText('None yet.').waitFor();
    expect(await focused(page)).toBe('Add stickers');
  });
});

test('Ctrl and Z take back what was written, not what was changed on the page, while names are written', async () => {
  const page = await app.open('activity=in-every-box&step=6&seed=5&sheets=2');
  await page.getByRole('button', { name: 'For a group' }).click();
  await page.getByRole('button', { name: 'Change this page' }).click();
  await page.locator('.change-target').nth(1).click();
  await page
    .getByRole('button', { name: /^Colour: / })
    .last()
    .click();
  await page.waitForURL(/changed=/);
  const names = page.getByRole('textbox', { name: 'Names, one a line' });
  await names.focus();
  await page.keyboard.press('Control+z');
  await page.waitForTimeout(500);
  expect(page.url()).toContain('changed=');
});

test('what is refused of a folded choice is told where it can be seen', async () => {
  const page = await app.open('activity=in-every-box&seed=7&with.boxes=99', {
    waitFor: 'objection',
  });
  const objection = page.locator('.more .objection:visible');
  expect(await objection.textContent()).toContain('99');
  expect(await page.locator('.objection:visible').count()).toBe(1);
});

test('a word of a folded choice is found by the browser’s own search, which opens it', async () => {
  const page = await app.open('activity=in-every-box&seed=7');
  const word = page.getByText('Only with what you have');
  await word.waitFor({ state: 'attached' });
  const panel = page.locator('[hidden="until-found"]', { has: word });
  expect(await word.isVisible()).toBe(false);
  // What the browser does before it goes to what it has found.
  await panel.dispatchEvent('beforematch');
  await word.waitFor();
  await page.getByLabel('Language').selectOption('es');
  await page.getByText('Solo con lo que tiene').waitFor();
});
