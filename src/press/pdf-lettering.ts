// The fonts of a document: letters as the glyph numbers of an embedded subset.
import type { Face, Text } from '../page/index.ts';
import { isPlainlyKnown } from './lettering.ts';
import type { EmbeddedFont, PDFDocument, PdfReference } from './pdf-library.js';

export interface FontFiles {
  /** Font files (TrueType) whose letters the page was measured with. */
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

type ReadFont = EmbeddedFont['font'];

/** What was read of font files, for the next document: to read one takes as long as to press a dozen pages. */
const read = new WeakMap<Uint8Array, ReadFont>();

/** A font file as the library takes it: what was read of it, where it was read before. */
export function readOnce(file: Uint8Array): Uint8Array | ReadFont {
  return read.get(file) ?? file;
}

/** Keeps what the document, which has just chosen the font, has read of its file. */
export function noteRead(file: Uint8Array, { _font }: PDFDocument): void {
  read.set(file, _font.font);
}

/** Turns letters into what a content stream shows, and makes the font known to the pages. */
export interface Lettering {
  /** The name of the font in content streams, such as `F1`. */
  readonly fontName: (weight: Text['weight']) => string;
  /** Four hexadecimal digits for each letter. */
  readonly glyphs: (letters: string, weight: Text['weight']) => string;
  /** The same of a whole line that the font sets letter by letter; absent: it does not. */
  readonly plainly: (line: Text) => string | undefined;
  /** The same for a face of another script, and for one of its glyphs by its number in the font. */
  readonly faceName: (face: Face) => string;
  readonly shaped: (face: Face, id: number) => string;
}

/** So many are remembered at once. */
const MOST_LINES = 500;

/** `known` is where pages find their fonts by name. */
export function letteringOf(
  document: PDFDocument,
  files: FontFiles,
  known: Record<string, PdfReference>,
): Lettering {
  const fonts = {
    regular: openFont(document, files.regular),
    bold: openFont(document, files.bold),
  };
  const named = ({ font }: OpenFont) => {
    known[font.id] ??= font.ref();
    return font.id;
  };
  const faces = new Map<Face, OpenFont>();
  const openFace = (face: Face) => {
    const open = faces.get(face) ?? openFont(document, face.file);
    faces.set(face, open);
    return open;
  };
  /** Most lines of a pack stand on every page. */
  let lines = new Map<string, string | undefined>();
  const plainly = (line: Text) => {
    const { text, weight, direction = '' } = line;
    const key = `${weight} ${direction} ${text}`;
    if (lines.has(key)) return lines.get(key);
    const isKnown = isPlainlyKnown(line);
    const shown = isKnown ? glyphsIn(fonts[weight], text.normalize('NFC')) : undefined;
    if (lines.size === MOST_LINES) lines = new Map();
    lines.set(key, shown);
    return shown;
  };
  return {
    plainly,
    fontName: (weight) => named(fonts[weight]),
    glyphs: (letters, weight) => glyphsIn(fonts[weight], letters),
    faceName: (face) => named(openFace(face)),
    shaped: (face, id) => shapedGlyph(openFace(face).font, id),
  };
}

interface OpenFont {
  readonly font: EmbeddedFont;
  readonly glyphs: Map<string, string>;
}

function openFont(document: PDFDocument, file: Uint8Array): OpenFont {
  document.font(readOnce(file));
  noteRead(file, document);
  return { font: document._font, glyphs: new Map() };
}

function glyphsIn(font: OpenFont, letters: string): string {
  let glyphs = '';
  for (const character of letters) glyphs += glyphIn(font, character);
  return glyphs;
}

/** One letter at a time, so there is nothing to kern, to join or to lay out. */
function glyphIn({ font, glyphs }: OpenFont, character: string): string {
  const known = glyphs.get(character);
  if (known !== undefined) return known;
  const letter = character.codePointAt(0) ?? 0;
  const glyph = includedGlyph(font, font.font.glyphForCodePoint(letter).id, [letter]);
  glyphs.set(character, glyph);
  return glyph;
}

/** What it reads is said beside it too, since one glyph may stand for many letters. */
function shapedGlyph(font: EmbeddedFont, id: number): string {
  return includedGlyph(font, id, font.font.getGlyph(id).codePoints);
}

/** Its number in the subset, where it reads what it read first. */
function includedGlyph(font: EmbeddedFont, id: number, reads: readonly number[]): string {
  const number = font.subset.includeGlyph(id);
  font.widths[number] ??= font.font.getGlyph(id).advanceWidth * font.scale;
  font.unicode[number] ??= reads;
  return number.toString(16).padStart(4, '0');
}
