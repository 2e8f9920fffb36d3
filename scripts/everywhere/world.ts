// What Node and the browser run alike to be compared: sheets from codes, drawn and pressed, as hashes.
import { type Language, loadAllCatalogues } from '../../src/languages/index.ts';
import { SCRIPTS } from '../../src/page/index.ts';
import { type FontFiles, svgOf, writePdf } from '../../src/press/index.ts';
import { type FontFile, loadScripts } from '../../src/shaping/index.ts';
import {
  makeSheetOfCode,
  type Pack,
  type PackPagesOptions,
  packPages,
  type Sheet,
} from '../../src/sheets/index.ts';

/** Sheets of one language, pressed into one PDF with the adult's pages and the answers. */
export interface Bundle {
  readonly language: Language;
  /** Whether each sheet as SVG has an adult's page of its own too, which is most of the work. */
  readonly withAdultPages: boolean;
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
  /** A number and a moment, as this place writes them. */
  readonly written: string;
  /** For each code the SHA-256 of its pages as SVG. */
  readonly sheets: Readonly<Record<string, string>>;
  /** For each bundle the SHA-256 of its PDF. */
  readonly pdfs: readonly string[];
  /** Bytes of all SVG and of all PDFs. */
  readonly bytes: { readonly svg: number; readonly pdf: number };
}

export async function makeWorld(
  bundles: readonly Bundle[],
  { fonts, read }: Surroundings,
): Promise<World> {
  await loadAllCatalogues();
  await loadScripts(SCRIPTS, read);
  const sheets: Record<string, string> = {};
  const pdfs: string[] = [];
  const bytes = { svg: 0, pdf: 0 };
  for (const { language, codes, withAdultPages } of bundles) {
    const made = codes.map(sheetOf);
    for (const sheet of made) {
      const svg = svgsOf(sheet, { language, withAdultPage: withAdultPages });
      bytes.svg += svg.length;
      sheets[sheet.code] = await hashOf(svg);
    }
    const pdf = await pdfOf({ sheets: made }, language, fonts);
    bytes.pdf += pdf.length;
    pdfs.push(await hashOf(pdf));
  }
  const { locale, timeZone } = new Intl.DateTimeFormat().resolvedOptions();
  const written = `${(1234.5).toLocaleString()} ${new Date(0).toLocaleString()}`;
  return { locale, timeZone, written, sheets, pdfs, bytes };
}

function sheetOf(code: string): Sheet {
  const made = makeSheetOfCode(code);
  if (!made.ok) throw new Error(`${code}: ${JSON.stringify(made.refusals)}`);
  return made.value;
}

/** The sheet with its pages to cut and its answers. */
function svgsOf(sheet: Sheet, options: PackPagesOptions): Uint8Array {
  const pages = [...packPages({ sheets: [sheet] }, options).pages];
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
