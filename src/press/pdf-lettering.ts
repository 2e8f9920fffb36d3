// The fonts of a document: letters as the glyph numbers of an embedded subset.
import type { Face, Text } from '../page/index.ts';
import type { EmbeddedFont, PDFDocument } from './pdf-library.js';

export interface FontFiles {
  /** Font files (TrueType) whose letters the page was measured with. */
  readonly regular: Uint8Array;
  readonly bold: Uint8Array;
}

/** Turns letters into what a content stream shows, and makes the font known to the open page. */
export interface Lettering {
  /** The name of the font in content streams, such as `F1`. */
  readonly fontName: (weight: Text['weight']) => string;
  /** Four hexadecimal digits. */
  readonly glyph: (character: string, weight: Text['weight']) => string;
  /** The same for a face of another script, and for one of its glyphs by its number in the font. */
  readonly faceName: (face: Face) => string;
  readonly shaped: (face: Face, id: number) => string;
}

export function letteringOf(document: PDFDocument, files: FontFiles): Lettering {
  const fonts = {
    regular: openFont(document, files.regular),
    bold: openFont(document, files.bold),
  };
  const named = ({ font }: OpenFont) => {
    document.page.fonts[font.id] = font.ref();
    return font.id;
  };
  const faces = new Map<Face, OpenFont>();
  const openFace = (face: Face) => {
    const open = faces.get(face) ?? openFont(document, face.file);
    faces.set(face, open);
    return open;
  };
  return {
    fontName: (weight) => named(fonts[weight]),
    glyph: (character, weight) => glyphIn(fonts[weight], character),
    faceName: (face) => named(openFace(face)),
    shaped: (face, id) => shapedGlyph(openFace(face).font, id),
  };
}

interface OpenFont {
  readonly font: EmbeddedFont;
  readonly glyphs: Map<string, string>;
}

function openFont(document: PDFDocument, file: Uint8Array): OpenFont {
  document.font(file);
  return { font: document._font, glyphs: new Map() };
}

/** One letter at a time: so there is nothing to kern or to join. */
function glyphIn({ font, glyphs }: OpenFont, character: string): string {
  const known = glyphs.get(character);
  if (known !== undefined) return known;
  const [encoded] = font.encode(character);
  const glyph = encoded.join('');
  glyphs.set(character, glyph);
  return glyph;
}

/** Its number in the subset; what it reads is said beside it, since one glyph may stand for many letters. */
function shapedGlyph(font: EmbeddedFont, id: number): string {
  const number = font.subset.includeGlyph(id);
  font.widths[number] ??= font.font.getGlyph(id).advanceWidth * font.scale;
  font.unicode[number] ??= font.font.getGlyph(id).codePoints;
  return number.toString(16).padStart(4, '0');
}
