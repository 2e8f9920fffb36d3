// Makes a whole pack or a report and presses it: as one PDF, or as drawn pages for the browser's own printing.
import { accept, type Result } from '../../base/index.ts';
import type { Page, Pages } from '../../page/index.ts';
import { type Report, reportPages } from '../../plan/index.ts';
import { svgOf, writePdf } from '../../press/index.ts';
import { type OnProgress, type Pack, packOfCodes, packPages } from '../../sheets/index.ts';
import { objectionsOf } from './objections-of.ts';
import { packOf } from './pack-of.ts';
import type { PressNews, PressOrder, PressWhat } from './protocol.ts';

/** A sheet and its share of an answer page; near enough for a progress bar. */
const PAGES_A_SHEET = 1.25;
const REPORT_PAGES = 2;

type Tell = (news: PressNews) => void;
type Fonts = Parameters<typeof writePdf>[1];

/** Tells how far it is, and at the end what came of it. */
export async function pressPack(
  order: PressOrder,
  loadFonts: () => Promise<Fonts>,
  tell: Tell,
): Promise<void> {
  const made = pagesFor(order, tell);
  if (!made.ok) {
    const activity = 'entries' in order ? order.entries.activity : '';
    tell({ kind: 'refused', objections: objectionsOf(made.refusals, activity) });
    return;
  }
  const { pages, expected } = made.value;
  const counted = { ...pages, pages: told(pages.pages, expected, tell) };
  if (order.as === 'pages') tell({ kind: 'pages', pages: drawn(counted) });
  else tell({ kind: 'pdf', bytes: await pdfOf(counted, await loadFonts()) });
}

interface Made {
  readonly pages: Pages;
  /** About how many they are. */
  readonly expected: number;
}

function pagesFor(what: PressWhat, tell: Tell): Result<Made> {
  if ('report' in what) return accept({ pages: reportPages(what.report), expected: REPORT_PAGES });
  const pack = packFor(what, (done, total) => tell({ kind: 'making', done, total }));
  if (!pack.ok) return pack;
  const expected = Math.ceil(pack.value.sheets.length * PAGES_A_SHEET) + 1;
  return accept({ pages: packPages(pack.value), expected });
}

function packFor(
  what: Exclude<PressWhat, { readonly report: Report }>,
  onProgress: OnProgress,
): Result<Pack> {
  if ('entries' in what) return packOf(what.entries, what.entries.sheets, onProgress);
  const { codes, goals = [] } = what;
  const pack = packOfCodes(codes, onProgress);
  return pack.ok ? accept({ ...pack.value, goals }) : pack;
}

/** The same pages, each told of as it is taken; they are made one by one, so their number is expected only. */
function* told(pages: Iterable<Page>, expected: number, tell: Tell): Iterable<Page> {
  let done = 0;
  for (const page of pages) {
    done += 1;
    tell({ kind: 'writing', done, total: Math.max(done, expected) });
    yield page;
  }
}

function drawn({ pages }: Pages) {
  return Array.from(pages, (page, index) => ({
    svg: svgOf(page, { idPrefix: `printed-${index + 1}` }),
    widthMm: page.widthMm,
    heightMm: page.heightMm,
  }));
}

async function pdfOf(pages: Pages, fonts: Fonts): Promise<Uint8Array<ArrayBuffer>> {
  const chunks: Uint8Array[] = [];
  await writePdf(pages, fonts, (chunk) => chunks.push(chunk));
  const bytes = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, at);
    at += chunk.length;
  }
  return bytes;
}
