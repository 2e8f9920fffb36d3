// An empty PDF document that is the same bytes on every machine, leaves as it grows, and keeps little of what has left.
import { strToU8 } from 'fflate';
import { bytesOf, joined } from './bytes.ts';
import { noteRead, readOnce } from './pdf-lettering.ts';
import { PDFDocument, type PdfReference } from './pdf-library.js';
import { type Objects, objectsTo } from './pdf-objects.ts';
import { escapeXml, wellFormed } from './xml-text.ts';

/** Stands in every file as the time of its making: the same pack gives the same bytes on any day. */
const MADE = '2026-01-01T00:00:00Z';
const MAKER = 'Samewise';
/** Chunks are gathered up to this many bytes. */
const CHUNK_BYTES = 16_384;

export interface DocumentFacts {
  readonly title: string;
  /** BCP 47. */
  readonly language: string;
  /** The font chosen first: without one the library asks for a font of the reader's machine. */
  readonly font: Uint8Array;
}

/** A document that is being filled. */
export interface OpenDocument {
  /** The library's part of it: the catalogue, the fonts, what the file says of itself. */
  readonly library: PDFDocument;
  /** What the library need not know goes out here, and is forgotten. */
  readonly objects: Objects;
  /** A number for an object. */
  readonly newId: () => number;
  /** Writes an object that the library refers to. */
  readonly put: (reference: PdfReference, text: string) => void;
  /** Writes what the library holds, and the end of the file. */
  readonly end: () => void;
}

/** Opens a tagged document whose bytes go to `write` in order while it is being filled. */
export function openDocument(
  { title, language, font }: DocumentFacts,
  write: (chunk: Uint8Array) => void,
): OpenDocument {
  const gathered = gather(write);
  const newId = () => library._offsets.push(null);
  const objects = objectsTo(gathered.add, newId);
  const [name, tag] = [wellFormed(title), wellFormed(language)];
  /** What the library writes while it puts one of its objects into words. */
  let heard: string[] | undefined;
  const wordsOf = (say: () => void) => {
    const words: string[] = [];
    heard = words;
    say();
    heard = undefined;
    // Between the lines that begin and end an object.
    return words.slice(1, -1).join('');
  };

  class SteadyDocument extends PDFDocument {
    /** Its objects leave as ours do. */
    override ref(data?: Record<string, unknown>): PdfReference {
      const reference = super.ref(data);
      const finalize = reference.finalize.bind(reference);
      reference.finalize = () => {
        const { buffer, id } = reference;
        // Without its bytes the library writes the dictionary alone.
        reference.buffer = [];
        if (buffer.length > 0) reference.data.Length = undefined;
        const words = wordsOf(finalize);
        if (buffer.length === 0) objects.put(id, words);
        else {
          const isPlain = reference.data.Type === 'Metadata';
          const putStream = isPlain ? objects.putPlainStream : objects.putStream;
          putStream(id, words.slice(OPEN.length, -CLOSE.length), joined(buffer));
        }
      };
      return reference;
    }

    /** Straight to the caller: the library's own stream differs between Node and the browser. */
    override _write(data: Uint8Array | string): void {
      if (heard) heard.push(String(data));
      else objects.raw(data instanceof Uint8Array ? data : bytesOf(`${data}\n`));
    }

    /** The library writes the title into its XML as it is, `&` and `<` too. */
    override endMetadata(): void {
      const metadata = this.ref({ Type: 'Metadata', Subtype: 'XML' });
      metadata.write(strToU8(metadataXml(name, tag)));
      metadata.end();
      this._root.data.Metadata = metadata;
    }

    /** Objects that are packed together are found in another way than the library writes. */
    override _finalize(): void {
      objects.end({ root: this._root.id, info: this._info.id, fileId: this._id });
      gathered.flush();
    }
  }
  const library = new SteadyDocument({
    pdfVersion: '1.7',
    compress: false,
    autoFirstPage: false,
    tagged: true,
    displayTitle: true,
    lang: tag,
    font: readOnce(font),
    info: { Title: name, Creator: MAKER, Producer: MAKER, CreationDate: new Date(MADE) },
  });
  noteRead(font, library);
  askForTrueSize(library);
  const put = (reference: PdfReference, text: string) => {
    objects.put(reference.id, text);
    library._refEnd(reference);
  };
  return { library, objects, newId, put, end: () => library.end() };
}

/** Around a dictionary. */
const [OPEN, CLOSE] = ['<<', '>>'];

/** The print window starts at 100 %, not at "fit" (ISO 32000, 12.2, PrintScaling). */
function askForTrueSize(document: PDFDocument): void {
  const preferences = document._root.data.ViewerPreferences as PdfReference;
  preferences.data.PrintScaling = 'None';
}

/** Passes chunks on in larger ones. */
function gather(write: (chunk: Uint8Array) => void) {
  let waiting: Uint8Array[] = [];
  let bytes = 0;
  const flush = () => {
    if (bytes > 0) write(joined(waiting));
    [waiting, bytes] = [[], 0];
  };
  const add = (chunk: Uint8Array) => {
    waiting.push(chunk);
    bytes += chunk.length;
    if (bytes >= CHUNK_BYTES) flush();
  };
  return { add, flush };
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
