// A sheet code is scanned from a photo or with the camera, in place of typing it.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { afterAll, describe, expect, test } from 'vitest';
import { type App, type OpenOptions, PHONE, startApp } from './app.ts';
import { faultsOf, WCAG } from './faults.ts';
import { addChild, codeField, codeOfElsewhere } from './record-parts.ts';
import { photoOf, photoOfOther, photoOfTable, scanOf, writeVideo } from './scan-pictures.ts';

const CODE = codeOfElsewhere();
const OTHER = 'https://example.org/';
const SHEET = 'Odd one out, step 4: 3 tasks.';
const FAKE_CAMERA = '--use-fake-device-for-media-stream';

async function openRecord(app: App, options: OpenOptions = {}): Promise<Page> {
  const page = await app.open('record', { waitFor: 'record', ...options });
  await addChild(page, 'Fern');
  return page;
}

function cameraButton(page: Page): Locator {
  return page.getByRole('button', { name: 'Scan with the camera' });
}

async function choosePhoto(page: Page, buffer: Buffer): Promise<void> {
  const choosing = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'From a photo' }).click();
  await (await choosing).setFiles({ name: 'photo.png', mimeType: 'image/png', buffer });
}

/** Keeps every camera that the page is lent, to be asked later whether it still runs. */
async function watchCameras(page: Page): Promise<void> {
  await page.evaluate(() => {
    const lend = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
    const lent: MediaStreamTrack[] = [];
    Object.assign(window, { lent });
    navigator.mediaDevices.getUserMedia = async (wanted) => {
      const stream = await lend(wanted);
      lent.push(...stream.getTracks());
      return stream;
    };
  });
}

function camerasOf(page: Page): Promise<readonly MediaStreamTrackState[]> {
  return page.evaluate(() =>
    (window as unknown as { lent: MediaStreamTrack[] }).lent.map(({ readyState }) => readyState),
  );
}

describe('from a photo', () => {
  const app = startApp();

  test.each([
    ['edge to edge', () => scanOf(CODE)],
    ['turned, dark and small in the picture', () => photoOf(CODE, { turn: 8, dark: 0.5 })],
    ['upside down', () => photoOf(CODE, { turn: 188 })],
  ])('a page %s gives its code and its sheet', async (_, photo) => {
    const page = await openRecord(app);
    await choosePhoto(page, photo());
    await page.getByText('The code was read from the photo.').waitFor();
    expect(await codeField(page).inputValue()).toBe(CODE);
    await page.getByText(SHEET).waitFor();
  });

  test.each([
    ['without a code', photoOfTable, 'No code was found in the photo.'],
    ['of another code', () => photoOfOther(OTHER), 'That is another code'],
    ['that is broken', () => scanOf(CODE).subarray(0, 90), 'cannot read this file as a picture'],
  ])('a photo %s says so, and what was typed stays', async (_, photo, words) => {
    const page = await openRecord(app);
    await codeField(page).fill('3222');
    await choosePhoto(page, photo());
    await page.getByText(words).waitFor();
    expect(await codeField(page).inputValue()).toBe('3222');
    await codeField(page).fill('3222-222A');
    await page.getByText(words).waitFor({ state: 'detached' });
    await codeField(page).fill('3222');
    expect(await page.getByText(words).count()).toBe(0);
  });

  test('nothing of it is fetched before it is wanted, and no picture leaves the page', async () => {
    const page = await openRecord(app);
    const asked: string[] = [];
    page.context().on('request', (request) => asked.push(`${request.method()} ${request.url()}`));
    await page.reload();
    await codeField(page).waitFor();
    expect(asked.filter((each) => each.includes('qr.worker'))).toEqual([]);
    await choosePhoto(page, scanOf(CODE));
    await page.getByText(SHEET).waitFor();
    expect(asked.filter((each) => each.includes('qr.worker'))).toHaveLength(1);
    expect(asked.filter((each) => !each.startsWith(`GET ${app.address()}`))).toEqual([]);
  });
});

describe('with a camera that sees another code and then a sheet', () => {
  const folder = mkdtempSync(join(tmpdir(), 'samewise-camera-'));
  const video = join(folder, 'camera.y4m');
  writeVideo(video, CODE, OTHER);
  afterAll(() => rmSync(folder, { recursive: true }));
  const app = startApp({ flags: [FAKE_CAMERA, `--use-file-for-fake-video-capture=${video}`] });

  test('it looks on past the other code, fills the field, and the camera is let go of', async () => {
    const page = await openRecord(app, { permissions: ['camera'] });
    await watchCameras(page);
    await cameraButton(page).click();
    await page.getByRole('dialog').getByText('That is another code').waitFor();
    await page.getByText('The camera has read the code.').waitFor();
    expect(await codeField(page).inputValue()).toBe(CODE);
    await page.getByText(SHEET).waitFor();
    expect(await page.getByRole('dialog').count()).toBe(0);
    expect(await camerasOf(page)).toEqual(['ended']);
  });
});

describe('with a camera that sees no code', () => {
  const app = startApp({ flags: [FAKE_CAMERA] });

  async function openCamera(options: OpenOptions = {}): Promise<Page> {
    const page = await openRecord(app, { permissions: ['camera'], ...options });
    await watchCameras(page);
    await cameraButton(page).click();
    await page.getByText('Hold the small square code').waitFor();
    expect(await camerasOf(page)).toEqual(['live']);
    return page;
  }

  async function isLetGo(page: Page): Promise<void> {
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    // The panel is gone a moment before what it held is let go of.
    await expect.poll(() => camerasOf(page)).toEqual(['ended']);
  }

  test('Escape closes, lets go of the camera and gives the focus back', async () => {
    const page = await openCamera();
    const hasFocus = () =>
      page.getByRole('dialog').evaluate((panel) => panel.contains(document.activeElement));
    expect(await hasFocus()).toBe(true);
    await page.keyboard.press('Tab');
    expect(await hasFocus()).toBe(true);
    await page.keyboard.press('Escape');
    await isLetGo(page);
    await page.waitForFunction(
      () => document.activeElement?.textContent === 'Scan with the camera',
    );
  });

  test('a page that goes out of sight lets go of the camera and says so', async () => {
    const page = await openCamera();
    await page.evaluate(() => {
      Object.defineProperty(document, 'visibilityState', { value: 'hidden' });
      document.dispatchEvent(new Event('visibilitychange'));
    });
    await isLetGo(page);
    await page.getByText('The camera was let go of').waitFor();
  });

  test('going to another place lets go of the camera', async () => {
    const page = await openCamera();
    await page.evaluate(() => {
      location.hash = '';
    });
    await isLetGo(page);
  });

  test('a camera that comes only after the panel was closed is let go of, too', async () => {
    const page = await openRecord(app, { permissions: ['camera'] });
    await page.evaluate(() => {
      const lend = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
      navigator.mediaDevices.getUserMedia = async (wanted) => {
        await new Promise((allow) => Object.assign(window, { allow }));
        return lend(wanted);
      };
    });
    await watchCameras(page);
    await cameraButton(page).click();
    await page.getByText('Starting the camera').waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    await page.evaluate(() => (window as unknown as { allow: () => void }).allow());
    await page.waitForFunction(() =>
      (window as unknown as { lent: MediaStreamTrack[] }).lent.some(
        ({ readyState }) => readyState === 'ended',
      ),
    );
  });

  test.each(['light', 'dark'] as const)(
    'the open panel has no fault and fits on a phone, in %s surroundings',
    async (colorScheme) => {
      const page = await openCamera({ viewport: PHONE, colorScheme });
      expect(await faultsOf(page, WCAG)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(PHONE.width);
      const panel = await page.getByRole('dialog').boundingBox();
      expect(panel?.x).toBeGreaterThanOrEqual(0);
      expect((panel?.x ?? 0) + (panel?.width ?? PHONE.width)).toBeLessThanOrEqual(PHONE.width);
      expect((panel?.y ?? 0) + (panel?.height ?? PHONE.height)).toBeLessThanOrEqual(PHONE.height);
      const close = await page.getByRole('button', { name: 'Close' }).boundingBox();
      expect(close?.height).toBeGreaterThanOrEqual(24);
    },
  );

  test('a refused camera says so, and what else can be done', async () => {
    const page = await openRecord(app, { permissions: [] });
    await cameraButton(page).click();
    const panel = page.getByRole('dialog');
    await panel.getByText('The camera was refused.').waitFor();
    await panel.getByText('Type the code, or choose a photo of the sheet.').waitFor();
    expect(await faultsOf(page, WCAG)).toEqual([]);
    await page.getByRole('button', { name: 'Close' }).click();
    await panel.waitFor({ state: 'detached' });
  });
});

describe('without a camera', () => {
  const app = startApp({
    host: '0.0.0.0',
    flags: [`${FAKE_CAMERA}=device-count=0`, '--host-resolver-rules=MAP home.test 127.0.0.1'],
  });

  test('it says that there is none', async () => {
    const page = await openRecord(app, { permissions: ['camera'] });
    await cameraButton(page).click();
    await page.getByText('No camera was found here.').waitFor();
  });

  test('on an address that is not secure it says that this is why', async () => {
    const page = await app.open('record', { waitFor: 'record' });
    await page.goto(`${app.address().replace('127.0.0.1', 'home.test')}#record`);
    await addChild(page, 'Fern');
    await cameraButton(page).click();
    await page.getByText('This address is not secure').waitFor();
  });
});
