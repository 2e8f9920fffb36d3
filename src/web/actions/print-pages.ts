// Prints drawn pages at true size through the browser's own print dialogue.
import type { PrintPage } from '../making/protocol.ts';

const PRINT_ID = 'printed';

/** Lays the pages out unseen, opens the dialogue, and clears them away when it closes. */
export async function printPages(pages: readonly PrintPage[]): Promise<void> {
  document.getElementById(PRINT_ID)?.remove();
  const printed = document.createElement('div');
  printed.id = PRINT_ID;
  printed.append(...pages.map(sheetOf));
  document.body.append(printed);
  await document.fonts.ready;
  window.addEventListener('afterprint', () => printed.remove(), { once: true });
  window.print();
}

function sheetOf({ svg, widthMm, heightMm }: PrintPage): HTMLElement {
  const sheet = document.createElement('div');
  sheet.className = `printed-page ${paperClass(widthMm, heightMm)}`;
  sheet.innerHTML = svg;
  return sheet;
}

/** The named page of the print style; A4 (ISO 216) is the only paper here with a 297 mm side. */
function paperClass(widthMm: number, heightMm: number): string {
  const paper = Math.max(widthMm, heightMm) > 290 ? 'a4' : 'letter';
  return `${paper}-${widthMm > heightMm ? 'sideways' : 'upright'}`;
}
