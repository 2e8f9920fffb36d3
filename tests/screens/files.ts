// Saved files, and what an independent reader says of them.
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';

export interface SavedPdf {
  readonly name: string;
  readonly bytes: Buffer;
}

/** Presses "Get the PDF" and waits for the file. */
export async function pdfOf(page: Page): Promise<SavedPdf> {
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Get the PDF' }).click();
  const download = await saving;
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}

/** The number of pages that poppler finds in a PDF. */
export function pagesIn(pdf: Uint8Array): number {
  return Number(/^Pages:\s+(\d+)$/m.exec(infoOf(pdf))?.[1]);
}

/** What poppler tells of a PDF. */
export function infoOf(pdf: Uint8Array): string {
  return execFileSync('pdfinfo', ['-'], { input: pdf, encoding: 'utf8' });
}
