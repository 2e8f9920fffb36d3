// The same pages give the same PDF, byte for byte, in Node and in a browser.
import { chromium } from 'playwright-core';
import { build, type Rolldown } from 'vite';
import { expect, test } from 'vitest';
import { FONTS, pdfOf } from '../outside/press-reading.ts';
import { FACTS, pages } from './pdf-bytes-entry.ts';

const ENTRY = new URL('./pdf-bytes-entry.ts', import.meta.url).pathname;

/** Answered by the test itself: nothing is fetched. */
const ADDRESS = 'http://press.test/';

/** The press as one module for a browser. */
async function browserModule(): Promise<string> {
  const built = (await build({
    configFile: false,
    logLevel: 'warn',
    build: { write: false, lib: { entry: ENTRY, formats: ['es'], fileName: 'press' } },
  })) as Rolldown.RolldownOutput[];
  const [chunk] = built[0]?.output ?? [];
  if (!chunk) throw new Error('nothing was built');
  return chunk.code;
}

async function pdfInBrowser(): Promise<Buffer> {
  const body = await browserModule();
  const browser = await chromium.launch({
    executablePath: '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-quic', '--disable-background-networking'],
  });
  try {
    const page = await browser.newPage();
    await page.route(`${ADDRESS}**`, (route) =>
      route.request().url() === ADDRESS
        ? route.fulfill({ contentType: 'text/html', body: '<!doctype html>' })
        : route.fulfill({ contentType: 'text/javascript', body }),
    );
    await page.goto(ADDRESS);
    const fonts = { regular: base64Of(FONTS.regular), bold: base64Of(FONTS.bold) };
    const base64 = await page.evaluate(
      `import('${ADDRESS}press.js').then(({ makePdf }) => makePdf(${JSON.stringify(fonts)}))`,
    );
    return Buffer.from(String(base64), 'base64');
  } finally {
    await browser.close();
  }
}

function base64Of(bytes: Uint8Array): string {
  return Buffer.from(bytes).toString('base64');
}

test('a PDF made in Chromium is the PDF made in Node', async () => {
  const [inBrowser, inNode] = [await pdfInBrowser(), await pdfOf(pages(), FACTS)];
  expect(inBrowser.length).toBeGreaterThan(10_000);
  expect(inBrowser.equals(inNode)).toBe(true);
});
