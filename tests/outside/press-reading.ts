// Pages as PDF, and what programs of other makers read in them.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '../../src/page/index.ts';
import { type FontFiles, writePdf } from '../../src/press/index.ts';

const fontFile = (name: string) =>
  new Uint8Array(readFileSync(new URL(`../../assets/fonts/${name}.ttf`, import.meta.url)));

export const FONTS: FontFiles = {
  regular: fontFile('Andika-Regular'),
  bold: fontFile('Andika-Bold'),
};

/** The whole PDF of some pages. */
export async function pdfOf(
  pages: Iterable<Page>,
  { title = 'A pack', language = 'en' } = {},
): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  await writePdf({ title, language, pages }, FONTS, (chunk) => chunks.push(chunk));
  return Buffer.concat(chunks);
}

/** What a program says of a PDF; `FILE` among its words stands for the file. */
export function readWith(pdf: Uint8Array, program: string, ...words: readonly string[]): string {
  const folder = mkdtempSync(join(tmpdir(), 'samewise-press-'));
  const file = join(folder, 'in.pdf');
  try {
    writeFileSync(file, pdf);
    const named = words.map((word) => (word === 'FILE' ? file : word));
    return execFileSync(program, named, { encoding: 'utf8', maxBuffer: 1 << 28, stdio: 'pipe' });
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** The dictionaries of all objects of a PDF, as qpdf reads them. */
export function objectsOf(pdf: Uint8Array): readonly Readonly<Record<string, unknown>>[] {
  const { qpdf } = JSON.parse(readWith(pdf, 'qpdf', '--json', '--json-key=qpdf', 'FILE')) as {
    qpdf: readonly [unknown, Record<string, { value?: unknown; stream?: { dict?: unknown } }>];
  };
  return Object.values(qpdf[1]).map(
    ({ value, stream }) => (stream?.dict ?? value ?? {}) as Readonly<Record<string, unknown>>,
  );
}

/** The elements of the structure tree of one kind, with their texts (qpdf writes `u:` before text). */
export function elementsOf(
  pdf: Uint8Array,
  type: string,
): readonly { readonly alt?: string; readonly actual?: string }[] {
  return objectsOf(pdf)
    .filter((object) => object['/S'] === `/${type}`)
    .map((object) => ({
      ...textAt(object, '/Alt', 'alt'),
      ...textAt(object, '/ActualText', 'actual'),
    }));
}

function textAt(object: Readonly<Record<string, unknown>>, key: string, name: string) {
  const text = object[key];
  return typeof text === 'string' ? { [name]: text.replace(/^u:/, '') } : {};
}
