// Nothing leaves the machine: every request goes to the app's own address, and nothing is stored but that it was printed here.
import { expect, test } from 'vitest';
import { serveWeb } from '../../scripts/serve.mjs';
import { drawn, drawnAnew, startApp } from './app.ts';
import { pdfOf } from './files.ts';

const app = startApp();

test('a whole visit asks nobody else and leaves nothing behind but that it was printed', async () => {
  const page = await app.open('seed=7', { serviceWorkers: 'allow' });
  const asked: string[] = [];
  const said: string[] = [];
  page.context().on('request', (request) => asked.push(request.url()));
  page.on('console', (message) => said.push(message.text()));
  page.on('pageerror', (error) => said.push(error.message));
  await page.reload();
  const before = await drawn(page);
  await page.getByRole('button', { name: 'One notch harder' }).click();
  await drawnAnew(page, before);
  await page.getByRole('button', { name: 'Open by code' }).click();
  await page.getByRole('dialog').waitFor();
  await page.keyboard.press('Escape');
  await pdfOf(page);
  const elsewhere = asked.filter(
    (url) => !url.startsWith(app.address()) && !url.startsWith(`blob:${app.address()}`),
  );
  expect(elsewhere).toEqual([]);
  expect(asked.some((url) => url.endsWith('.ttf'))).toBe(true);
  expect(said).toEqual([]);
  expect(await page.evaluate(() => [{ ...localStorage }, { ...sessionStorage }])).toEqual([
    { 'samewise.printed': 'yes' },
    {},
  ]);
  expect(await page.context().cookies()).toEqual([]);
});

test('the fonts of the PDF are not asked for until a PDF is', async () => {
  const page = await app.open('seed=7');
  const asked: string[] = [];
  page.context().on('request', (request) => asked.push(request.url()));
  await page.reload();
  await drawn(page);
  expect(asked.filter((url) => url.endsWith('.ttf'))).toEqual([]);
});

test('the server forbids inline script and anything from elsewhere', async () => {
  const response = await fetch(app.address());
  const policy = response.headers.get('content-security-policy') ?? '';
  expect(policy).toContain("default-src 'self'");
  expect(policy).not.toMatch(/'unsafe-/);
  expect(await response.text()).not.toMatch(/<script(?![^>]*\bsrc=)/);
});

test('the server takes the next port where one is taken, and tells when a wanted one is', async () => {
  const folder = new URL('.', import.meta.url).pathname;
  const second = await serveWeb({ folder });
  expect(second.address).not.toBe(app.address());
  const port = Number(new URL(app.address()).port);
  await expect(serveWeb({ folder, port })).rejects.toMatchObject({ code: 'EADDRINUSE' });
  await second.close();
});
