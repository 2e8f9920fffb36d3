// Pages as PDF for the printer: true size, real text, tagged, written page by page.
import type { Pages } from '../page/index.ts';
import { Drawing } from './drawing.ts';
import { Operators } from './operators.ts';
import { openDocument } from './pdf-document.ts';
import { type FontFiles, letteringOf } from './pdf-lettering.ts';
import type { PdfReference } from './pdf-library.js';
import { outlineOf } from './pdf-outline.ts';
import { writePage } from './pdf-page.ts';
import { pageTree } from './pdf-pages.ts';
import { stampsOf } from './pdf-stamps.ts';
import { structureOf } from './pdf-structure.ts';

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
  const fontsByName: Record<string, PdfReference> = {};
  const resources = document.library.ref({ Font: fontsByName });
  const stamps = stampsOf(document);
  const parts = {
    lettering: letteringOf(document.library, fonts, fontsByName),
    structure: structureOf(document),
    outline: outlineOf(document),
    tree: pageTree(document, resources),
    content: new Operators(),
    drawing: new Drawing(),
    stamps,
  };
  for (const page of pages.pages) writePage(page, parts);
  stamps.end(resources);
  for (const part of [parts.tree, parts.structure, parts.outline, resources]) part.end();
  document.end();
}
