// Makes a PDF in Chromium, from a module that is built for it and answered by the test itself.
import { chromium } from 'playwright-core';
import { build, type Rolldown } from 'vite';
import { FONTS } from '../outside/press-reading.ts';

/** Nothing is fetched. */
const ADDRESS = 'http://press.test/';

/** The press as one module for a browser. */
async function browserModule(entry: URL): Promise<string> {
  const built = (await build({
    configFile: false,
    logLevel: 'warn',
    build: { write: false, lib: { entry: entry.pathname, formats: ['es'], fileName: 'press' } },
  })) as Rolldown.RolldownOutput[];
  const [chunk] = built[0]?.output ?? [];
  if (!chunk) throw new Error('nothing was built');
  return chunk.code;
}

/** What `makePdf` of a module writes in a browser; it gets the fonts, and gives the file, as base64. */
export async function pdfInBrowser(entry: URL): Promise<Buffer> {
  const body = await browserModule(entry);
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
