// What Node and the browser run alike for the test of equal bytes: sheets from codes, drawn and pressed, as hashes.
import { type Language, loadAllCatalogues } from '../../src/languages/index.ts';
import { SCRIPTS } from '../../src/page/index.ts';
import { type FontFiles, svgOf, writePdf } from '../../src/press/index.ts';
import { type FontFile, loadScripts } from '../../src/shaping/index.ts';
import { makeSheet, type Pack, packPages, readCode, type Sheet } from '../../src/sheets/index.ts';

/** Sheets of one language, pressed into one PDF. */
export interface Bundle {
  readonly language: Language;
  readonly codes: readonly string[];
}

export interface Surroundings {
  readonly fonts: FontFiles;
  readonly read: (file: FontFile) => Promise<Uint8Array>;
}

/** What a world gives, and where it says that it is. */
export interface World {
  readonly locale: string;
  readonly timeZone: string;
  /** A thousand and the first of a month, as this place writes them. */
  readonly written: string;
  /** For each code the SHA-256 of its pages as SVG. */
  readonly sheets: Readonly<Record<string, string>>;
  /** For each bundle the SHA-256 of its PDF. */
  readonly pdfs: readonly string[];
}

export async function makeWorld(
  bundles: readonly Bundle[],
  { fonts, read }: Surroundings,
): Promise<World> {
  await loadAllCatalogues();
  await loadScripts(SCRIPTS, read);
  const sheets: Record<string, string> = {};
  const pdfs: string[] = [];
  for (const { language, codes } of bundles) {
    const made = codes.map(sheetOf);
    for (const sheet of made)
      sheets[sheet.code] = await hashOf(svgsOf({ sheets: [sheet] }, language));
    pdfs.push(await hashOf(await pdfOf({ sheets: made }, language, fonts)));
  }
  const { locale, timeZone } = new Intl.DateTimeFormat().resolvedOptions();
  const written = `${(1234.5).toLocaleString()} ${new Date(0).toLocaleString()}`;
  return { locale, timeZone, written, sheets, pdfs };
}

function sheetOf(code: string): Sheet {
  const spec = readCode(code);
  const made = spec.ok ? makeSheet(spec.value) : spec;
  if (!made.ok) throw new Error(`${code}: ${JSON.stringify(made.refusals)}`);
  return made.value;
}

function svgsOf(pack: Pack, language: Language): Uint8Array {
  const pages = [...packPages(pack, { language }).pages];
  return new TextEncoder().encode(pages.map((page) => svgOf(page)).join('\n'));
}

async function pdfOf(pack: Pack, language: Language, fonts: FontFiles): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  await writePdf(packPages(pack, { language }), fonts, (chunk) => {
    chunks.push(Uint8Array.from(chunk));
  });
  return new Uint8Array(await new Blob(chunks as BlobPart[]).arrayBuffer());
}

async function hashOf(bytes: Uint8Array): Promise<string> {
  const sum = new Uint8Array(await crypto.subtle.digest('SHA-256', Uint8Array.from(bytes)));
  return Array.from(sum, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
