// An empty PDF document that is the same bytes on every machine and leaves as it grows.
import { strToU8, zlibSync } from 'fflate';
import { PDFDocument, type PdfReference } from './pdf-library.js';
import { escapeXml, wellFormed } from './xml-text.ts';

/** Stands in every file as the time of its making: the same pack gives the same bytes on any day. */
const MADE = '2026-01-01T00:00:00Z';
const MAKER = 'Samewise';
/** Chunks are gathered up to this many bytes. */
const CHUNK_BYTES = 65_536;

export interface DocumentFacts {
  readonly title: string;
  /** BCP 47. */
  readonly language: string;
  /** The font chosen first: without one the library asks for a font of the reader's machine. */
  readonly font: Uint8Array;
}

/** Opens a tagged document whose bytes go to `write` in order while it is being filled. */
export function openDocument(
  { title, language, font }: DocumentFacts,
  write: (chunk: Uint8Array) => void,
): PDFDocument {
  const gathered = gather(write);
  const [name, tag] = [wellFormed(title), wellFormed(language)];

  class SteadyDocument extends PDFDocument {
    /** Straight to the caller: the library's own stream differs between Node and the browser. */
    protected override push(chunk: Uint8Array | null): boolean {
      gathered(chunk);
      return true;
    }

    /** Streams are deflated here, since the library deflates by other means in Node than elsewhere. */
    override ref(data?: Record<string, unknown>): PdfReference {
      return deflating(super.ref(data));
    }

    /** The library writes the title into its XML as it is, `&` and `<` too. */
    protected override endMetadata(): void {
      const metadata = this.ref({ Type: 'Metadata', Subtype: 'XML' });
      metadata.write(strToU8(metadataXml(name, tag)));
      metadata.end();
      this._root.data.Metadata = metadata;
    }
  }
  const document = new SteadyDocument({
    pdfVersion: '1.7',
    compress: false,
    autoFirstPage: false,
    tagged: true,
    displayTitle: true,
    lang: tag,
    font,
    info: { Title: name, Creator: MAKER, Producer: MAKER, CreationDate: new Date(MADE) },
  });
  askForTrueSize(document);
  return document;
}

/** The print window starts at 100 %, not at "fit" (ISO 32000, 12.2, PrintScaling). */
function askForTrueSize(document: PDFDocument): void {
  const preferences = document._root.data.ViewerPreferences as PdfReference;
  preferences.data.PrintScaling = 'None';
}

/** The object, its stream deflated just before it is written. */
function deflating(reference: PdfReference): PdfReference {
  const finalize = reference.finalize.bind(reference);
  reference.finalize = () => {
    if (reference.buffer.length > 0 && reference.data.Type !== 'Metadata') {
      reference.buffer = [zlibSync(joined(reference.buffer))];
      reference.data.Filter = 'FlateDecode';
    }
    finalize();
  };
  return reference;
}

/** Passes chunks on in larger ones; null passes on what is left. */
function gather(write: (chunk: Uint8Array) => void): (chunk: Uint8Array | null) => void {
  let waiting: Uint8Array[] = [];
  let bytes = 0;
  return (chunk) => {
    if (chunk) {
      waiting.push(chunk);
      bytes += chunk.length;
    }
    if (bytes >= CHUNK_BYTES || (chunk === null && bytes > 0)) {
      write(joined(waiting));
      [waiting, bytes] = [[], 0];
    }
  };
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const all = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    all.set(chunk, at);
    at += chunk.length;
  }
  return all;
}

/** The document's facts as XMP (ISO 16684-1), for readers that look there. */
function metadataXml(title: string, language: string): string {
  return [
    '<?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>',
    '<x:xmpmeta xmlns:x="adobe:ns:meta/">',
    '<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">',
    '<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"',
    ' xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/">',
    `<dc:title><rdf:Alt><rdf:li xml:lang="x-default">${escapeXml(title)}</rdf:li></rdf:Alt></dc:title>`,
    `<dc:language><rdf:Bag><rdf:li>${escapeXml(language)}</rdf:li></rdf:Bag></dc:language>`,
    `<xmp:CreateDate>${MADE}</xmp:CreateDate>`,
    `<xmp:CreatorTool>${MAKER}</xmp:CreatorTool>`,
    `<pdf:Producer>${MAKER}</pdf:Producer>`,
    '</rdf:Description></rdf:RDF></x:xmpmeta>',
    '<?xpacket end="w"?>',
  ].join('\n');
}
