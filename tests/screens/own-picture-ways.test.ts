// Every way by which a picture comes in, and by which it is made bigger: dropped, pasted, pinched; what cannot be opened.
import { Resvg } from '@resvg/resvg-js';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { PHONE, startApp } from './app.ts';

const app = startApp();
const RECIPE = 'activity=find-the-same&step=3&sheets=1&seed=7&with.content=pictures';

const FLOWER = Buffer.from(
  new Resvg(`<svg xmlns="http://www.w3.org/2000/svg" width="500" height="700">
    <rect width="500" height="700" fill="#f6f1e6"/>
    <path d="M240 330h20v320h-20z" fill="#3c7d3a"/>
    <circle cx="250" cy="240" r="130" fill="#c9417e"/><circle cx="250" cy="240" r="50" fill="#f2c53d"/></svg>`)
    .render()
    .asPng(),
);

/** The first bytes of a HEIC photo (ISO/IEC 23008-12): its brands, and a picture that is not there. */
const HEIC = Buffer.concat([
  Buffer.from([0, 0, 0, 24]),
  Buffer.from('ftypheic\0\0\0\0mif1heic'),
  Buffer.alloc(200),
]);

const SCRIPTED = Buffer.from(`<?xml version="1.0"?>
<svg xmlns="http://www.w3.org/2000/svg" width="90" height="90" onload="window.ran = 1">
<script>window.ran = 1</script><image href="http://elsewhere.test/seen.png" width="9" height="9"/>
<foreignObject width="9" height="9"><img xmlns="http://www.w3.org/1999/xhtml" src="x" onerror="window.ran = 1"/>
</foreignObject></svg>`);

/** Hands a file to the page as a person's drop or paste does, since neither can be done from outside a browser. */
async function hand(page: Page, way: 'drop' | 'paste', name: string, file: Buffer): Promise<void> {
  await page.evaluate(
    ({ way, name, type, base64 }) => {
      const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
      const held = new DataTransfer();
      held.items.add(new File([bytes], name, { type }));
      const usual = { bubbles: true, cancelable: true };
      const target = document.querySelector('.drop-place');
      if (way === 'paste') {
        document.dispatchEvent(new ClipboardEvent('paste', { ...usual, clipboardData: held }));
      } else {
        for (const kind of ['dragenter', 'dragover', 'drop']) {
          target?.dispatchEvent(new DragEvent(kind, { ...usual, dataTransfer: held }));
        }
      }
    },
    { way, name, type: `image/${name.split('.')[1]}`, base64: file.toString('base64') },
  );
}

async function openFold(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Own pictures' }).click();
  await page.getByRole('button', { name: 'Take a photo or choose a picture' }).waitFor();
}

async function proposed(page: Page): Promise<string> {
  const shown = page.getByRole('img', { name: 'The picture as it is printed' });
  await shown.waitFor();
  return (await shown.locator('path').first().getAttribute('d')) ?? '';
}

test.each(['drop', 'paste'] as const)('a picture comes in by %s, and is kept', async (way) => {
  const page = await app.open(RECIPE);
  await openFold(page);
  await hand(page, way, 'flower.png', FLOWER);
  expect(await proposed(page)).toMatch(/^M/);
  await page.locator('.crop-picture').getByRole('textbox', { name: 'Name' }).fill('flower');
  await page.getByRole('button', { name: 'Keep the picture' }).click();
  await page.getByText('Kept on this device: flower.').waitFor();
});

test('two fingers that part make the picture bigger, and back together as it was', async () => {
  const page = await app.open(RECIPE, { viewport: PHONE, hasTouch: true });
  await openFold(page);
  await hand(page, 'drop', 'flower.png', FLOWER);
  const stage = page.getByRole('group', { name: /What is taken of the picture/ });
  const first = await drawn(page);
  await stage.scrollIntoViewIfNeeded();
  const box = await stage.boundingBox();
  if (!box) throw new Error('no stage');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  const client = await page.context().newCDPSession(page);
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', apart: number) =>
    client.send('Input.dispatchTouchEvent', {
      type,
      touchPoints:
        type === 'touchEnd'
          ? []
          : [
              { x: x - apart, y, id: 1 },
              { x: x + apart, y, id: 2 },
            ],
    });
  await touch('touchStart', 30);
  for (const apart of [36, 44, 54, 60]) await touch('touchMove', apart);
  await expect.poll(async () => (await drawn(page)).flower).toBeGreaterThan(1.5 * first.flower);
  for (const apart of [54, 44, 36, 30]) await touch('touchMove', apart);
  await touch('touchEnd', 0);
  await expect.poll(async () => (await drawn(page)).flower).toBeLessThan(1.1 * first.flower);
});

test('keys and named buttons make it bigger by the same steps as a pinch does', async () => {
  const page = await app.open(RECIPE);
  await openFold(page);
  await hand(page, 'paste', 'flower.png', FLOWER);
  const first = await drawn(page);
  await page.getByRole('group', { name: /What is taken of the picture/ }).focus();
  for (let press = 0; press < 4; press++) await page.keyboard.press('+');
  await expect.poll(async () => (await drawn(page)).flower).toBeGreaterThan(1.4 * first.flower);
  for (let press = 0; press < 4; press++) {
    await page.getByRole('button', { name: 'Smaller' }).press('Enter');
  }
  await expect.poll(async () => (await drawn(page)).flower).toBeLessThan(1.1 * first.flower);
});

/** How many pixels of the stage show the flower, which is pink. */
async function drawn(page: Page): Promise<{ readonly flower: number }> {
  const canvas = page.locator('.crop-stage canvas');
  await canvas.waitFor();
  return canvas.evaluate((shown) => {
    const { width, height } = shown as HTMLCanvasElement;
    const pixels = (shown as HTMLCanvasElement).getContext('2d')?.getImageData(0, 0, width, height);
    const isPink = (at: number) =>
      (pixels?.data[at] ?? 0) > 150 &&
      (pixels?.data[at + 1] ?? 0) < 110 &&
      (pixels?.data[at + 2] ?? 0) > 80;
    return {
      flower: Array.from({ length: width * height }, (_, at) => 4 * at).filter(isPink).length,
    };
  });
}

test.each([
  ['drop', 'photo.heic', HEIC, 'This browser cannot open HEIC photos.'],
  ['paste', 'photo.heic', HEIC, 'This browser cannot open HEIC photos.'],
  ['drop', 'drawing.svg', SCRIPTED, 'That is an SVG drawing'],
  ['paste', 'drawing.png', SCRIPTED, 'That is an SVG drawing'],
  ['drop', 'torn.png', FLOWER.subarray(0, 90), 'That picture is broken'],
  ['paste', 'empty.png', Buffer.alloc(0), 'That file is empty.'],
] as const)('by %s, %s is answered with a reason; nothing runs or is fetched', async (...given) => {
  const [way, name, file, reason] = given;
  const page = await app.open(RECIPE);
  const asked: string[] = [];
  page.on('request', (request) => void asked.push(request.url()));
  await openFold(page);
  await hand(page, way, name, file);
  await page.getByText(reason).waitFor();
  expect(await page.evaluate(() => 'ran' in window)).toBe(false);
  expect(asked.filter((url) => !url.startsWith(app.address()) && !url.startsWith('blob:'))).toEqual(
    [],
  );
  expect(await page.locator('.crop-picture').count()).toBe(0);
});
