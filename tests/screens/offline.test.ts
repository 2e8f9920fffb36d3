// Installed, and with the network off: the whole loop from the second visit on, under any address.
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, describe, expect, test } from 'vitest';
import { drawn, drawnAnew, startApp } from './app.ts';
import { pagesIn, pdfOf } from './files.ts';
import { addChild } from './record-parts.ts';
import { newSite, untilStored } from './versions.ts';

const WITH_WORKER = { serviceWorkers: 'allow' } as const;

/** Addresses that were asked for by any tab or by the service worker, and how many of them by the latter. */
function listenTo(context: BrowserContext) {
  const asked: string[] = [];
  const ofWorker: string[] = [];
  context.on('request', (request) => {
    asked.push(request.url());
    if (request.serviceWorker() !== null) ofWorker.push(request.url());
  });
  return { asked, ofWorker };
}

async function offlineTab(page: Page, address: string): Promise<Page> {
  const context = page.context();
  await context.setOffline(true);
  await page.close();
  const tab = await context.newPage();
  await tab.goto(address);
  return tab;
}

/** Make, change, PDF, and a child in Record, then every other place. */
async function goThrough(page: Page): Promise<void> {
  const before = await drawn(page);
  await page.getByRole('button', { name: 'One notch harder' }).click();
  await drawnAnew(page, before);
  const pdf = await pdfOf(page);
  expect(pagesIn(pdf.bytes)).toBeGreaterThan(11);
  await page.getByRole('link', { name: 'Record' }).click();
  await addChild(page, 'Fern');
  for (const place of ['Today', 'Week', 'Growth', 'Supplies']) {
    await page.getByRole('link', { name: place }).click();
    await page.getByRole('main').and(page.locator('.today, .week, .growth, .supplies')).waitFor();
  }
}

describe('at the root of an address', () => {
  const app = startApp();

  test('the second visit works with the network off, from making a sheet to its record', async () => {
    const first = await app.open('seed=7', WITH_WORKER);
    await untilStored(first);
    const page = await offlineTab(first, `${app.address()}#seed=7`);
    const said: string[] = [];
    page.on('pageerror', (error) => said.push(error.message));
    await goThrough(page);
    expect(said).toEqual([]);
    // The network is off for the service worker as well.
    const outcome = await page.evaluate(() =>
      fetch('not-stored').then(
        () => 'came',
        () => 'failed',
      ),
    );
    expect(outcome).toBe('failed');
  });

  test('no tab and no service worker ever asks another address', async () => {
    const first = await app.blank(WITH_WORKER);
    const { asked, ofWorker } = listenTo(first.context());
    await first.goto(`${app.address()}#seed=7`);
    await untilStored(first);
    await goThrough(first);
    await first.reload();
    const elsewhere = asked.filter(
      (url) => !url.startsWith(app.address()) && !url.startsWith(`blob:${app.address()}`),
    );
    expect(elsewhere).toEqual([]);
    expect(ofWorker.length).toBeGreaterThan(0);
  });

  test('an address that is no file leads to the app when the network is off', async () => {
    const first = await app.open('seed=7', WITH_WORKER);
    await untilStored(first);
    const page = await offlineTab(first, `${app.address()}some/where`);
    await drawn(page);
    expect(new URL(page.url()).pathname).toBe('/');
  });

  test('the server keeps what is named by its content for good, and has all else asked for anew', async () => {
    const headersOf = async (name: string) => (await fetch(app.address() + name)).headers;
    const page = await (await fetch(app.address())).text();
    const script = /assets\/index-[^"]+\.js/.exec(page)?.[0] ?? '';
    expect((await headersOf(script)).get('cache-control')).toMatch(/max-age=31536000, immutable/);
    for (const name of ['', 'sw.js', 'manifest.webmanifest']) {
      expect((await headersOf(name)).get('cache-control')).toBe('no-cache');
    }
    expect((await headersOf('sw.js')).get('content-type')).toMatch(/^text\/javascript/);
    const type = (await headersOf('manifest.webmanifest')).get('content-type');
    expect(type).toMatch(/^application\/manifest\+json/);
    expect((await headersOf('assets/gone.js')).get('cache-control')).toBeNull();
  });

  test('the browser is asked to keep the records with the first of them, and not before', async () => {
    const page = await app.open('record', { waitFor: 'record' });
    await page.evaluate(() => {
      const asked: string[] = [];
      Object.assign(window, { asked });
      navigator.storage.persist = async () => {
        asked.push('persist');
        return false;
      };
    });
    const timesAsked = () =>
      page.evaluate(() => (window as unknown as { asked: readonly string[] }).asked.length);
    await page.getByRole('link', { name: 'Supplies' }).click();
    await page.getByRole('button', { name: 'Add stickers' }).click();
    await page.getByLabel('How many').fill('30');
    expect(await timesAsked()).toBe(0);
    await page.getByRole('button', { name: 'Save the count' }).click();
    await page.getByText('The count is saved.').waitFor();
    await expect.poll(timesAsked).toBe(1);
    await page.getByRole('link', { name: 'Record' }).click();
    await page.getByText(/^This browser may throw the records away/).waitFor();
    await addChild(page, 'Fern');
    expect(await timesAsked()).toBe(1);
  });
});

describe('under a longer address', () => {
  const site = newSite('papers/samewise');
  // Such hooks run the last one first: the folder goes when its server has gone.
  afterAll(site.remove);
  const app = startApp({ build: () => site.folder });

  test('the app works with the network off there, and minds that part of the address alone', async () => {
    const address = `${app.address()}papers/samewise/`;
    const first = await app.blank(WITH_WORKER);
    await first.goto(address);
    await untilStored(first);
    const scope = await first.evaluate(async () => (await navigator.serviceWorker.ready).scope);
    expect(scope).toBe(address);
    const page = await offlineTab(first, address);
    await goThrough(page);
  });
});

describe('without a service worker', () => {
  const app = startApp({
    host: '0.0.0.0',
    flags: ['--host-resolver-rules=MAP samewise.test 127.0.0.1'],
  });

  async function saidBy(page: Page, address: string): Promise<readonly string[]> {
    const said: string[] = [];
    page.on('console', (message) => said.push(message.text()));
    page.on('pageerror', (error) => said.push(error.message));
    await page.goto(address);
    await drawn(page);
    await pdfOf(page);
    // What the browser itself remarks of a header that it minds on safe addresses alone.
    return said.filter((text) => !text.startsWith('The Cross-Origin-Opener-Policy header'));
  }

  test('the app works over plain http from another machine, and says nothing of it', async () => {
    const page = await app.blank(WITH_WORKER);
    const address = app.address().replace('127.0.0.1', 'samewise.test');
    expect(await saidBy(page, address)).toEqual([]);
    expect(await page.evaluate(() => 'serviceWorker' in navigator)).toBe(false);
  });

  test('the app works where the browser refuses one, and says nothing of it', async () => {
    const page = await app.blank(WITH_WORKER);
    await page.addInitScript(() => {
      ServiceWorkerContainer.prototype.register = () =>
        Promise.reject(new DOMException('refused', 'SecurityError'));
    });
    expect(await saidBy(page, app.address())).toEqual([]);
  });
});
