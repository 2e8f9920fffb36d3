// The same pages give the same PDF, byte for byte, in Node and in a browser.
import { expect, test } from 'vitest';
import { pdfOf } from '../outside/press-reading.ts';
import { ownPages } from './own-pdf-entry.ts';
import { FACTS, pages } from './pdf-bytes-entry.ts';
import { pdfInBrowser } from './pdf-in-browser.ts';

test.each([
  ['of pages of all kinds', './pdf-bytes-entry.ts', pages],
  ['of sheets that are made there of own pictures', './own-pdf-entry.ts', ownPages],
])('a PDF made in Chromium, %s, is the PDF made in Node', async (_, entry, made) => {
  const inBrowser = await pdfInBrowser(new URL(entry, import.meta.url));
  const inNode = await pdfOf(made(), FACTS);
  expect(inBrowser.length).toBeGreaterThan(10_000);
  expect(inBrowser.equals(inNode)).toBe(true);
});

test('figures that are kept once are among them', async () => {
  expect(Buffer.from(await pdfOf(pages(), FACTS)).includes('/Subtype/Form')).toBe(true);
});
