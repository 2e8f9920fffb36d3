// Pages as PDF for the printer: true size, real text, tagged, written page by page.
import type { Pages } from '../page/index.ts';
import { openDocument } from './pdf-document.ts';
import { type FontFiles, letteringOf } from './pdf-lettering.ts';
import { writePage } from './pdf-page.ts';

/**
 * Writes the pages as one PDF. Chunks go to `write` in order as pages are finished, and no page is kept;
 * the same pages and fonts give the same bytes in Node and in a browser.
 */
export async function writePdf(
  pages: Pages,
  fonts: FontFiles,
  write: (chunk: Uint8Array) => void,
): Promise<void> {
  const document = openDocument(
    { title: pages.title, language: pages.language, font: fonts.regular },
    write,
  );
  const lettering = letteringOf(document, fonts);
  const root = document.struct('Document');
  document.addStructure(root);
  for (const page of pages.pages) writePage(page, document, root, lettering);
  root.end();
  document.end();
}
