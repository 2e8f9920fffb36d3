// Saved files, and what an independent reader says of them.
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import type { Download, Page } from 'playwright-core';

export interface SavedPdf {
  readonly name: string;
  readonly bytes: Buffer;
}

/** Presses "Get the PDF" and waits for the file. */
export async function pdfOf(page: Page): Promise<SavedPdf> {
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Get the PDF' }).click();
  const download = await saving;
  return { name: download.suggestedFilename(), bytes: await bytesOf(download) };
}

export async function bytesOf(download: Download): Promise<Buffer> {
  return readFileSync(await download.path());
}

/** The text that poppler finds in a PDF, with a form feed after each page. */
export function textOf(pdf: Uint8Array): string {
  return execFileSync('pdftotext', ['-layout', '-', '-'], { input: pdf, encoding: 'utf8' });
}

/** The number of pages that poppler finds in a PDF. */
export function pagesIn(pdf: Uint8Array): number {
  return Number(/^Pages:\s+(\d+)$/m.exec(infoOf(pdf))?.[1]);
}

/** What poppler tells of a PDF. */
export function infoOf(pdf: Uint8Array): string {
  return execFileSync('pdfinfo', ['-'], { input: pdf, encoding: 'utf8' });
}
