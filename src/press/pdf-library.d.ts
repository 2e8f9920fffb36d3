// What the press uses of pdfkit 0.20, its inner parts included (marked so): an update must look at these.

/** An object of the file. */
export interface PdfReference {
  data: Record<string, unknown>;
  /** Inner: the chunks of its stream. */
  buffer: Uint8Array[];
  write(chunk: Uint8Array | string): void;
  /** Inner: writes the object out; called once, by `end`. */
  finalize(): void;
  end(): void;
}

/** A stretch of a page's content that belongs to an element. */
export interface StructureContent {
  readonly refs: readonly unknown[];
}

/** An element of the structure tree; written out when it has ended and has a parent. */
export interface StructureElement {
  add(child: StructureElement | StructureContent): this;
  end(): void;
}

export interface StructureOptions {
  readonly title?: string;
  readonly alt?: string;
  readonly actual?: string;
}

/** Inner: an embedded font, which grows by the glyphs that are asked of it. */
export interface EmbeddedFont {
  readonly id: string;
  /** Glyphs as four hexadecimal digits each, and their places. */
  encode(words: string): [glyphs: string[], positions: unknown];
  /** Inner: from font units to thousandths of the em. */
  readonly scale: number;
  /** Inner, by the number of a glyph in the subset: its advance in thousandths of the em, and what it reads. */
  readonly widths: number[];
  readonly unicode: (readonly number[])[];
  readonly subset: { includeGlyph(id: number): number };
  readonly font: {
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
  readonly font: Uint8Array;
  readonly info: Readonly<Record<string, string | Date>>;
}

export class PDFDocument {
  constructor(options: DocumentOptions);
  readonly page: { readonly fonts: Record<string, PdfReference> };
  readonly outline: { addItem(title: string, options: { readonly fit: boolean }): unknown };
  /** Inner: the font chosen last. */
  readonly _font: EmbeddedFont;
  /** Inner: the catalogue. */
  readonly _root: PdfReference;
  font(source: Uint8Array): this;
  ref(data?: Record<string, unknown>): PdfReference;
  addPage(options: { readonly size: readonly [number, number]; readonly margin: number }): this;
  addContent(operators: string): this;
  struct(type: string, options?: StructureOptions): StructureElement;
  addStructure(element: StructureElement): this;
  markContent(tag: string): this;
  markStructureContent(tag: string): StructureContent;
  endMarkedContent(): this;
  end(): void;
  /** Inner: hands a chunk of the file to the stream; null at the end. */
  protected push(chunk: Uint8Array | null): boolean;
  /** Inner: writes the metadata in XML. */
  protected endMetadata(): void;
}
