// What the browser runs for the test of equal bytes: the press over a few pages; fonts and file as base64.
import type { Page } from '../../src/page/index.ts';
import { writePdf } from '../../src/press/index.ts';
import { adultPageOf, figuresPageOf, sheetPageOf, specimenPages } from '../outside/press-pages.ts';

/** Pages with figures, text in both weights and a QR code; figures so often that they are kept once. */
export function pages() {
  const figures = Array.from({ length: 4 }, figuresPageOf);
  return [sheetPageOf('ABCD-2345'), ...figures, adultPageOf(), ...specimenPages()];
}

export const FACTS = { title: 'A “pack” & more', language: 'en' };

function bytesOf(base64: string): Uint8Array {
  return Uint8Array.from(atob(base64), (character) => character.charCodeAt(0));
}

export interface FontTexts {
  readonly regular: string;
  readonly bold: string;
}

/** The whole PDF of some pages. */
export async function pdfText(made: Iterable<Page>, fonts: FontTexts): Promise<string> {
  let binary = '';
  await writePdf(
    { ...FACTS, pages: made },
    { regular: bytesOf(fonts.regular), bold: bytesOf(fonts.bold) },
    (chunk) => {
      for (const byte of chunk) binary += String.fromCharCode(byte);
    },
  );
  return btoa(binary);
}

export function makePdf(fonts: FontTexts): Promise<string> {
  return pdfText(pages(), fonts);
}
