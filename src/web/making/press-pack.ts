// Makes a whole pack or a report and presses it: as one PDF, or as drawn pages for the browser's own printing.
import { zipSync } from 'fflate';
import { accept, type Result } from '../../base/index.ts';
import { pagesMade } from '../../by-hand/index.ts';
import { correctedPages, type Page, type Pages, type PaperName } from '../../page/index.ts';
import { type Report, reportPages } from '../../plan/index.ts';
import { svgOf, writePdf } from '../../press/index.ts';
import {
  childFileName,
  type OnProgress,
  type Pack,
  packFileText,
  packOfCodes,
  packsOfChildren,
  printedPapers,
  rulerPages,
} from '../../sheets/index.ts';
import { languageNow } from '../speaking/language-now.ts';
import { madeOf } from './made-of.ts';
import { correctionOf, paperNamed } from './measure-of.ts';
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
  const { papers, expected } = made.value;
  const measured = correctionOf(order, papers);
  if (!measured.ok) {
    tell({ kind: 'refused', objections: objectionsOf(measured.refusals, '') });
    return;
  }
  const scaled = (each: Pages) => ({ ...each, pages: correctedPages(each.pages, measured.value) });
  const pages = scaled(made.value.pages);
  const files = made.value.files.map(([name, own]) => [name, scaled(own)] as const);
  if (order.as === 'pack') {
    const bytes = new TextEncoder().encode(made.value.file());
    tell({ kind: 'pack', bytes });
    return;
  }
  if (order.as === 'zip') {
    tell({ kind: 'zip', bytes: await zipOf(files, expected, await loadFonts(), tell) });
    return;
  }
  const counted = { ...pages, pages: told(pages.pages, expected, tell) };
  if (order.as === 'pages') tellPages(counted, tell);
  else tell({ kind: 'pdf', bytes: await pdfOf(counted, await loadFonts()) });
}

interface Made {
  readonly pages: Pages;
  /** What they are printed on. */
  readonly papers: readonly PaperName[];
  /** About how many they are. */
  readonly expected: number;
  /** For a group, the pages of each child by the name of its file. */
  readonly files: readonly (readonly [name: string, pages: Pages])[];
  /** The text of the pack file; empty where there is no pack. */
  readonly file: () => string;
}

function pagesFor(what: PressWhat, tell: Tell): Result<Made> {
  if ('report' in what)
    return accept({
      pages: reportPages(what.report),
      papers: [what.report.paper],
      expected: REPORT_PAGES,
      files: [],
      file: () => '',
    });
  if ('rulerFor' in what) {
    const pages = rulerPages(paperNamed(what.rulerFor), languageNow());
    return accept({ pages, papers: [], expected: 1, files: [], file: () => '' });
  }
  const pack = packFor(what, (done, total) => tell({ kind: 'making', done, total }));
  if (!pack.ok) return pack;
  const expected = Math.ceil(pack.value.sheets.length * PAGES_A_SHEET) + 1;
  const made = 'entries' in what ? madeOf(what.entries) : {};
  const pages = pagesMade(pack.value, made, { language: languageNow() });
  if (!pages.ok) return pages;
  const children = packsOfChildren(pack.value);
  const files: (readonly [name: string, pages: Pages])[] = [];
  for (const { child, pack: own } of children) {
    const its = pagesMade(own, made, { language: languageNow() });
    // No file of the ZIP is left out without a word.
    if (!its.ok) return its;
    files.push([`${childFileName(child, children.length)}.pdf`, its.value]);
  }
  const papers = printedPapers(pack.value.sheets.map(({ spec }) => spec.page));
  const file = () => packFileText(pack.value);
  return accept({ pages: pages.value, papers, expected, files, file });
}

function packFor(
  what: Exclude<PressWhat, { readonly report: Report } | { readonly rulerFor: string }>,
  onProgress: OnProgress,
): Result<Pack> {
  if ('entries' in what) return packOf(what, onProgress);
  const { codes, goals = [] } = what;
  const pack = packOfCodes(codes, onProgress);
  return pack.ok ? accept({ ...pack.value, goals }) : pack;
}

/** PDFs are compressed already; the ZIP holds them as they are, all of one fixed date, so that it is always the same. */
async function zipOf(
  files: Made['files'],
  expected: number,
  fonts: Fonts,
  tell: Tell,
): Promise<Uint8Array<ArrayBuffer>> {
  const pdfs: Record<string, Uint8Array> = {};
  let done = 0;
  for (const [name, pages] of files) {
    pdfs[name] = await pdfOf(pages, fonts);
    done += expected / files.length;
    tell({ kind: 'writing', done: Math.round(done), total: expected });
  }
  return Uint8Array.from(zipSync(pdfs, { level: 0, mtime: FIXED_DATE }));
}

/** The earliest that a ZIP can hold is 1980. */
const FIXED_DATE = '2000-01-01T12:00:00';

/** The same pages, each told of as it is taken; they are made one by one, so their number is expected only. */
function* told(pages: Iterable<Page>, expected: number, tell: Tell): Iterable<Page> {
  let done = 0;
  for (const page of pages) {
    done += 1;
    tell({ kind: 'writing', done, total: Math.max(done, expected) });
    yield page;
  }
}

function tellPages({ pages }: Pages, tell: Tell): void {
  let number = 0;
  for (const page of pages) {
    number += 1;
    const { widthMm, heightMm } = page;
    const svg = svgOf(page, { idPrefix: `printed-${number}` });
    tell({ kind: 'page', page: { svg, widthMm, heightMm } });
  }
  tell({ kind: 'pages' });
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
