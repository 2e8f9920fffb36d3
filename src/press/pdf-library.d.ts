// What the press uses of pdfkit 0.20, its inner parts included (marked so): an update must look at these.

/** An object of the file. */
export interface PdfReference {
  readonly id: number;
  data: Record<string, unknown>;
  /** Inner: the chunks of its stream. */
  buffer: Uint8Array[];
  write(chunk: Uint8Array | string): void;
  /** Inner: writes the object out; called once, by `end`. */
  finalize(): void;
  end(): void;
}

/** Inner: an embedded font, which grows by the glyphs that are asked of it. */
export interface EmbeddedFont {
  readonly id: string;
  /** Inner: from font units to thousandths of the em. */
  readonly scale: number;
  /** Inner, by the number of a glyph in the subset: its advance in thousandths of the em, and what it reads. */
  readonly widths: number[];
  readonly unicode: (readonly number[])[];
  readonly subset: { includeGlyph(id: number): number };
  readonly font: {
    glyphForCodePoint(codePoint: number): { readonly id: number };
    getGlyph(id: number): { readonly advanceWidth: number; readonly codePoints: readonly number[] };
  };
  ref(): PdfReference;
}

export interface DocumentOptions {
  readonly pdfVersion: '1.7';
  readonly compress: boolean;
  readonly autoFirstPage: boolean;
  readonly tagged: boolean;
  readonly displayTitle: boolean;
  readonly lang: string;
  /** As `font` takes it. */
  readonly font: Uint8Array | EmbeddedFont['font'];
  readonly info: Readonly<Record<string, string | Date>>;
}

export class PDFDocument {
  constructor(options: DocumentOptions);
  readonly outline: {
    /** Inner: an empty object unless it is filled. */ readonly dictionary: PdfReference;
  };
  /** Inner: the font chosen last. */
  readonly _font: EmbeddedFont;
  /** Inner: the catalogue, and what the file says of itself. */
  readonly _root: PdfReference;
  readonly _info: PdfReference;
  /** Inner: what tells this file from others. */
  readonly _id: Uint8Array;
  /** Inner: an entry for each object; its length is the last number taken. */
  readonly _offsets: unknown[];
  /** The bytes of a font file, or what the library read of them for another document. */
  font(source: Uint8Array | EmbeddedFont['font']): this;
  ref(data?: Record<string, unknown>): PdfReference;
  end(): void;
  /** Inner: notes that the object has been written. */
  _refEnd(reference: PdfReference): void;
  /** Inner: writes bytes, or a line of characters that are bytes. */
  _write(data: Uint8Array | string): void;
  /** Inner: writes the metadata in XML. */
  endMetadata(): void;
  /** Inner: writes what comes behind the last object. */
  _finalize(): void;
}
