// Own pictures: added from a file, cropped by keys and by touch, shown on Make, kept, removed and brought back; bad files.
import { deflateSync } from 'node:zlib';
import { Resvg } from '@resvg/resvg-js';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { DESKTOP, PHONE, startApp } from './app.ts';
import { faultsOf } from './faults.ts';
import { keptEntries } from './kept-entries.ts';

const app = startApp();
const RECIPE = 'activity=find-the-same&step=3&sheets=1&seed=7&with.content=pictures';

/** A child's drawing of a sun on paper that is not quite white. */
const SUN = png(`<svg xmlns="http://www.w3.org/2000/svg" width="600" height="500">
  <rect width="600" height="500" fill="#f4efe4"/>
  <circle cx="300" cy="250" r="120" fill="#ffd21f" stroke="#d33" stroke-width="14"/>
  <path d="M300 10v90M300 400v90M60 250h90M450 250h90" stroke="#e80" stroke-width="26"/></svg>`);
const FLAT = png(
  '<svg xmlns="http://www.w3.org/2000/svg" width="90" height="90"><rect width="90" height="90" fill="#888"/></svg>',
);

function png(svg: string): Buffer {
  return Buffer.from(new Resvg(svg).render().asPng());
}

/** A true picture of 10 000 by 6 000 pixels in few bytes, all of them black. */
function hugePng(): Buffer {
  const [width, height] = [10_000, 6_000];
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([1, 0, 0, 0, 0], 8);
  const rows = deflateSync(Buffer.alloc(height * (1 + width / 8)));
  const chunk = (kind: string, data: Buffer) => {
    const length = Buffer.alloc(4);
    length.writeUInt32BE(data.length);
    return Buffer.concat([length, Buffer.from(kind), data, Buffer.alloc(4)]);
  };
  const start = Buffer.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10]);
  return Buffer.concat([start, chunk('IHDR', header), chunk('IDAT', rows)]);
}

async function openFold(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Own pictures' }).click();
  await page.getByRole('button', { name: 'Take a photo or choose a picture' }).waitFor();
}

async function choose(page: Page, name: string, buffer: Buffer): Promise<void> {
  const input = page.locator('.drop-place input[type=file]');
  await input.setInputFiles({ name, mimeType: 'application/octet-stream', buffer });
}

async function proposed(page: Page): Promise<string> {
  const shown = page.getByRole('img', { name: 'The picture as it is printed' });
  await shown.waitFor();
  return (await shown.locator('path').first().getAttribute('d')) ?? '';
}

/** What the stage shows, as one text. */
function staged(page: Page): Promise<string> {
  const canvas = page.locator('.crop-stage canvas');
  return canvas.evaluate((shown) => (shown as HTMLCanvasElement).toDataURL());
}

async function keepSun(page: Page): Promise<void> {
  await openFold(page);
  await choose(page, 'sun.png', SUN);
  await proposed(page);
  await page.locator('.crop-picture').getByRole('textbox', { name: 'Name' }).fill('sun');
  await page.getByRole('button', { name: 'Keep the picture' }).click();
  await page.getByText('Kept on this device: sun.').waitFor();
}

test('a drawing is kept, stands on sheets after a reload, and comes back after it was removed', async () => {
  const page = await app.open(RECIPE);
  await keepSun(page);
  await page.getByRole('button', { name: 'On the sheets: sun' }).click();
  await page.waitForURL(/pictures=[2-9A-Y]{7}(&|$)/);
  expect(page.url()).not.toContain('sun');
  await page.reload();
  await page.locator('.sheet svg').first().waitFor();
  expect(await page.locator('.desk .objection:visible').count()).toBe(0);
  await openFold(page);
  const [entry] = await keptEntries(page);
  expect(entry).toMatchObject({ kind: 'picture', name: 'sun' });
  await page.getByRole('button', { name: 'Remove sun' }).click();
  await page.getByText('No picture is kept yet.').waitFor();
  expect(await keptEntries(page)).toEqual([]);
  expect(page.url()).not.toContain('pictures=');
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('button', { name: 'Remove sun' }).waitFor();
  expect(await keptEntries(page)).toEqual([entry]);
  await page.waitForURL(/pictures=/);
});

test('what is taken is moved and made bigger by keys and by buttons with names', async () => {
  const page = await app.open(RECIPE);
  await openFold(page);
  await choose(page, 'sun.png', SUN);
  const first = await proposed(page);
  const whole = await staged(page);
  await page.getByRole('group', { name: /What is taken of the picture/ }).focus();
  for (const key of ['ArrowRight', 'ArrowRight', '+', '+', '+', '+'])
    await page.keyboard.press(key);
  await expect.poll(() => staged(page)).not.toBe(whole);
  await expect.poll(() => proposed(page), { timeout: 20_000 }).not.toBe(first);
  // The stage, which is drawn at once: what is printed comes later, and a mere move may leave it as it was.
  for (const name of ['Smaller', 'Left']) {
    const before = await staged(page);
    await page.getByRole('button', { name, exact: true }).press('Enter');
    await expect.poll(() => staged(page)).not.toBe(before);
  }
});

test('what is taken is moved by touch', async () => {
  const page = await app.open(RECIPE, { viewport: PHONE, hasTouch: true });
  await openFold(page);
  await choose(page, 'sun.png', SUN);
  const first = await proposed(page);
  const stage = page.getByRole('group', { name: /What is taken of the picture/ });
  await stage.scrollIntoViewIfNeeded();
  const box = await stage.boundingBox();
  if (!box) throw new Error('no stage');
  const client = await page.context().newCDPSession(page);
  const touch = (type: string, x: number) =>
    client.send('Input.dispatchTouchEvent', {
      type: type as 'touchStart',
      touchPoints: type === 'touchEnd' ? [] : [{ x, y: box.y + 60 }],
    });
  await touch('touchStart', box.x + 60);
  for (const along of [80, 110, 150]) await touch('touchMove', box.x + along);
  await touch('touchEnd', 0);
  await expect.poll(() => proposed(page)).not.toBe(first);
});

test.each([
  ['empty.png', Buffer.alloc(0), 'That file is empty.'],
  ['note.png', Buffer.from('Only words.'), 'That is no picture that is known here.'],
  ['broken.png', SUN.subarray(0, 60), 'That picture is broken'],
  ['huge.png', hugePng(), 'more than 40 million pixels'],
  [
    'drawing.svg',
    Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"><script>window.ran = 1</script></svg>'),
    'That is an SVG drawing',
  ],
  ['flat.png', FLAT, 'it is all of one colour'],
] as const)(
  '%s is answered with a reason, and nothing is lost or run',
  async (name, file, reason) => {
    const page = await app.open(RECIPE);
    await keepSun(page);
    await choose(page, name, file);
    await page.getByText(reason).waitFor();
    expect(await page.evaluate(() => 'ran' in window)).toBe(false);
    expect(await page.getByRole('button', { name: 'Remove sun' }).count()).toBe(1);
  },
);

test('a link whose pictures are not on this device says so', async () => {
  const page = await app.open(`${RECIPE}&pictures=2222222`, { waitFor: 'objection' });
  await page.getByText('not kept on this device. Nothing is lost').first().waitFor();
});

test('where storage is full the picture is not kept, and stays to be kept later', async () => {
  const page = await app.open(RECIPE);
  await openFold(page);
  await page.evaluate(() => {
    IDBObjectStore.prototype.add = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await choose(page, 'sun.png', SUN);
  await proposed(page);
  await page.getByRole('button', { name: 'Keep the picture' }).click();
  await page.getByText('This browser has no room left').waitFor();
  expect(await page.getByRole('button', { name: 'Keep the picture' }).isEnabled()).toBe(true);
});

describe.each([DESKTOP, PHONE])('at $width pixels', (viewport) => {
  test('the place for own pictures has no fault that axe-core finds', async () => {
    const page = await app.open(RECIPE, { viewport });
    await keepSun(page);
    await choose(page, 'flat.png', FLAT);
    await page.getByText('it is all of one colour').waitFor();
    expect(await faultsOf(page)).toEqual([]);
  });
});
