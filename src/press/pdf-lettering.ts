// The fonts of a document: letters as the glyph numbers of an embedded subset.
import type { Text } from '../page/index.ts';
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
}

export function letteringOf(document: PDFDocument, files: FontFiles): Lettering {
  const fonts = {
    regular: openFont(document, files.regular),
    bold: openFont(document, files.bold),
  };
  return {
    fontName: (weight) => {
      const { font } = fonts[weight];
      document.page.fonts[font.id] = font.ref();
      return font.id;
    },
    glyph: (character, weight) => glyphIn(fonts[weight], character),
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
