// Prints drawn pages at true size through the browser's own print dialogue.
import type { PrintPage } from '../making/protocol.ts';

const PRINT_ID = 'printed';

export interface Printing {
  /** Lays the next page out, unseen; where they are never printed nothing of it stays. */
  readonly lay: (page: PrintPage) => void;
  /** Puts the pages into the document, opens the dialogue, and clears them away when it closes. */
  readonly print: () => Promise<void>;
}

/** A pile of pages to be printed. */
export function startPrinting(): Printing {
  const printed = document.createElement('div');
  printed.id = PRINT_ID;
  return {
    lay: (page) => printed.append(sheetOf(page)),
    print: async () => {
      document.getElementById(PRINT_ID)?.remove();
      document.body.append(printed);
      await document.fonts.ready;
      window.addEventListener('afterprint', () => printed.remove(), { once: true });
      window.print();
    },
  };
}

function sheetOf({ svg, widthMm, heightMm }: PrintPage): HTMLElement {
  const sheet = document.createElement('div');
  sheet.className = `printed-page ${paperClass(widthMm, heightMm)}`;
  sheet.innerHTML = svg;
  return sheet;
}

/** Longer sides in mm of the papers that go into a printer (ISO 216, and 11 inches): no two are alike. */
const LONG_SIDES_MM: readonly (readonly [paper: string, sideMm: number])[] = [
  ['a3', 420],
  ['a4', 297],
  ['letter', 279.4],
];

/** The named page of the print style: the paper whose longer side it is, to a mm. */
function paperClass(widthMm: number, heightMm: number): string {
  const longMm = Math.max(widthMm, heightMm);
  const found = LONG_SIDES_MM.find(([, sideMm]) => Math.abs(sideMm - longMm) < 1);
  if (found === undefined) throw new Error(`print: no paper has a side of ${longMm} mm`);
  return `${found[0]}-${widthMm > heightMm ? 'sideways' : 'upright'}`;
}
