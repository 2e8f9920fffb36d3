// The whole job in a browser whose every way out leads to a listener: nothing is asked elsewhere, no policy is broken.
import { createServer } from 'node:net';
import type { Page } from 'playwright-core';
import { afterAll, expect, test } from 'vitest';
import { codeOf, drawn, drawnAnew, startApp } from './app.ts';
import { bytesOf, pdfOf } from './files.ts';
import { addChild, codeField } from './record-parts.ts';
import { photoOf } from './scan-pictures.ts';
import { untilStored } from './versions.ts';

/** Where this browser itself, no page, asks its maker for newer parts and for help with filling in forms. */
const OF_THE_BROWSER =
  /^(CONNECT|POST http:\/\/)\s?(update|content-autofill|optimizationguide-pa)\.googleapis\.com|^CONNECT ((accounts|clients2|www)\.google|redirector\.gvt1)\.com/;

/** Stands in for everything that is not this machine: what is sent to it is kept, and the line is cut. */
async function startListener() {
  const heard: string[] = [];
  const server = createServer((socket) => {
    socket.on('error', () => {});
    socket.on('data', (piece) => {
      const line = piece.toString('latin1').split('\r\n')[0] ?? '';
      if (!OF_THE_BROWSER.test(line)) heard.push(line);
      socket.destroy();
    });
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('no port');
  return { heard, port: address.port, close: () => server.close() };
}

const listener = await startListener();
afterAll(() => listener.close());
const app = startApp({ flags: [`--proxy-server=http://127.0.0.1:${listener.port}`] });

interface Watched {
  readonly asked: string[];
  /** What the browser complained of, violations of the policy among it. */
  readonly said: string[];
}

/** Keeps what every tab, worker and service worker of the browser asks for and complains of. */
async function watch(page: Page): Promise<Watched> {
  const context = page.context();
  const watched: Watched = { asked: [], said: [] };
  context.on('request', (request) => watched.asked.push(request.url()));
  context.on('console', (message) => watched.said.push(message.text()));
  context.on('weberror', (error) => watched.said.push(error.error().message));
  await context.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) => {
      const { effectiveDirective, blockedURI, sourceFile } = event;
      console.error(`policy: ${effectiveDirective} ${blockedURI} in ${sourceFile}`);
    });
    window.print = () => document.body.setAttribute('data-printed', 'yes');
  });
  return watched;
}

function elsewhere({ asked }: Watched): readonly string[] {
  const own = app.address();
  return asked.filter((url) => !url.startsWith(own) && !url.startsWith(`blob:${own}`));
}

async function goTo(page: Page, place: string): Promise<void> {
  await page.getByRole('link', { name: place, exact: true }).click();
}

async function printed(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Print', exact: true }).click();
  await page.locator('body[data-printed]').waitFor();
  await page.evaluate(() => document.body.removeAttribute('data-printed'));
}

/** Another sheet, one task of it changed, printed, and a PDF for a group with a name in another script. */
async function makeAndPrint(page: Page): Promise<string> {
  const before = await drawn(page);
  await page.getByRole('button', { name: 'One notch harder' }).click();
  await drawnAnew(page, before);
  await page.getByRole('button', { name: 'Change this page' }).click();
  await page.locator('.change-target').nth(1).click();
  await page
    .getByRole('button', { name: /^Colour: / })
    .first()
    .click();
  await page.getByRole('button', { name: 'Undo' }).first().click();
  await page.getByRole('button', { name: 'For a group' }).click();
  await page.getByRole('textbox', { name: 'Names, one a line' }).fill('Fern\nПапороть\nليلى');
  expect((await pdfOf(page)).bytes.subarray(0, 5).toString()).toBe('%PDF-');
  await printed(page);
  return codeOf(page);
}

async function addPicture(page: Page, picture: Buffer): Promise<void> {
  await page.getByRole('button', { name: 'Own pictures' }).click();
  const input = page.locator('.drop-place input[type=file]');
  await input.setInputFiles({ name: 'a.png', mimeType: 'image/png', buffer: picture });
  await page.getByRole('img', { name: 'The picture as it is printed' }).waitFor();
  await page.locator('.crop-picture').getByRole('textbox', { name: 'Name' }).fill('squares');
  await page.getByRole('button', { name: 'Keep the picture' }).click();
  await page.getByText('Kept on this device: squares.').waitFor();
}

async function recordFromPhoto(page: Page, photo: Buffer, code: string): Promise<void> {
  await goTo(page, 'Record');
  await addChild(page, 'Fern');
  const choosing = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'From a photo' }).click();
  await (await choosing).setFiles({ name: 'photo.png', mimeType: 'image/png', buffer: photo });
  await expect.poll(() => codeField(page).inputValue(), { timeout: 60_000 }).toBe(code);
  await page.getByRole('radio', { name: 'All right', exact: true }).click();
  await page.getByRole('button', { name: 'Save the record' }).click();
  await page.getByText(/^Saved for Fern/).waitFor();
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Back up' }).click();
  expect((await bytesOf(await saving)).toString()).toContain('samewise.records');
}

async function planAndCount(page: Page): Promise<void> {
  await goTo(page, 'Growth');
  await page.getByText(/^1 sheet on 1 day/).waitFor();
  await printed(page);
  await pdfOf(page);
  await goTo(page, 'Week');
  await page.getByRole('button', { name: /^Plan the week/ }).click();
  await page
    .getByText(/^Planned for /)
    .first()
    .waitFor();
  await goTo(page, 'Supplies');
  await page.getByRole('button', { name: 'Add stickers' }).click();
  await page.getByLabel('How many').fill('30');
  await page.getByRole('button', { name: 'Save the count' }).click();
  await page.getByText('The count is saved.').waitFor();
  await goTo(page, 'Today');
  await page.locator('.today-day[aria-busy="false"] .day-things').first().waitFor();
}

async function changeLanguages(page: Page): Promise<void> {
  for (const language of ['es', 'hi', 'ar', 'en']) {
    await page.locator('.language select').selectOption(language);
    await page.locator(`html[lang="${language}"]`).waitFor();
  }
}

test('the whole job, with and without a network, asks nobody else and breaks no policy', async () => {
  const page = await app.blank({ serviceWorkers: 'allow' });
  const watched = await watch(page);
  await page.goto(`${app.address()}#activity=in-every-box&step=5&sheets=2&seed=7`);
  const code = await makeAndPrint(page);
  const photo = photoOf(code, {});
  await addPicture(page, photo);
  await recordFromPhoto(page, photo, code);
  await planAndCount(page);
  await changeLanguages(page);
  await untilStored(page);
  await page.context().setOffline(true);
  await page.reload();
  await goTo(page, 'Make');
  await drawn(page);
  await pdfOf(page);
  await page.context().setOffline(false);
  expect(watched.asked.length).toBeGreaterThan(30);
  expect(elsewhere(watched)).toEqual([]);
  expect(listener.heard).toEqual([]);
  expect(watched.said).toEqual([]);
}, 300_000);

test('what would leave the page is stopped by the policy, seen by the watch, and never gets out', async () => {
  const page = await app.blank();
  const watched = await watch(page);
  await page.goto(`${app.address()}#seed=7`);
  await drawn(page);
  const stopped = await page.evaluate(async () => {
    const far = 'https://elsewhere.example/';
    const image = new Image();
    image.src = `${far}a.png`;
    const script = document.createElement('script');
    script.textContent = 'document.title = "run"';
    document.head.append(script);
    const style = document.createElement('style');
    style.textContent = 'body { opacity: 0 }';
    document.head.append(style);
    // What DevTools itself runs may run text; what comes later may not.
    await new Promise((resolve) => setTimeout(resolve, 100));
    const tries = [
      () => fetch(far),
      () => navigator.sendBeacon(far, 'names'),
      () => new WebSocket('wss://elsewhere.example/'),
      () => new EventSource(far),
      () => Function('document.title = "run"')(),
      () => import(`${far}a.js`),
    ];
    const outcomes = await Promise.allSettled(tries.map(async (each) => each()));
    await new Promise((resolve) => setTimeout(resolve, 500));
    return outcomes.map(({ status }) => status);
  });
  expect(stopped[0]).toBe('rejected');
  expect(stopped[4]).toBe('rejected');
  expect(await page.title()).not.toBe('run');
  const told = watched.said.filter((line) => line.startsWith('policy: ')).join('\n');
  for (const directive of ['img-src', 'connect-src', 'script-src-elem', 'style-src-elem']) {
    expect(told).toContain(directive);
  }
  // The listener does hear what a page without a policy asks for.
  expect(listener.heard).toEqual([]);
  const free = await app.blank();
  await free.goto('about:blank');
  await free.evaluate(() => fetch('http://elsewhere.example/').catch(() => {}));
  expect(listener.heard.join()).toContain('elsewhere.example');
});

test('the policy names no outside address and lets nothing be run that is text', async () => {
  const { headers } = await fetch(app.address());
  const policy = headers.get('content-security-policy') ?? '';
  const rules = new Map(
    policy.split('; ').map((rule) => [rule.split(' ')[0], rule.split(' ').slice(1)] as const),
  );
  const allowed = /^('self'|'none'|'wasm-unsafe-eval'|'sha256-[A-Za-z0-9+/]{43}=')$/;
  expect([...rules.values()].flat().filter((source) => !allowed.test(source))).toEqual([]);
  expect(rules.get('default-src')).toEqual(["'self'"]);
  for (const name of ['object-src', 'base-uri', 'form-action', 'frame-ancestors']) {
    expect(rules.get(name), name).toEqual(["'none'"]);
  }
  expect(headers.get('x-content-type-options')).toBe('nosniff');
  expect(headers.get('referrer-policy')).toBe('no-referrer');
});
