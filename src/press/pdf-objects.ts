// The objects of a file on their way out: streams as they come, all others packed together into streams.
import { bytesOf, hexOf, joined } from './bytes.ts';
import { deflated } from './deflating.ts';
import { Operators } from './operators.ts';
import { PLACE_WIDTHS, Places } from './pdf-places.ts';

/** Objects in one stream: more pack better, fewer are read sooner. */
const MOST_TOGETHER = 200;
const ENOUGH_BYTES = 32_768;

export interface Trailer {
  readonly root: number;
  readonly info: number;
  readonly fileId: Uint8Array;
}

export interface Objects {
  /** Bytes of the file that are part of no object. */
  readonly raw: (bytes: Uint8Array) => void;
  /** Writes an object under its number; each character of the text is a byte. */
  readonly put: (id: number, text: string) => void;
  /** Writes a stream; the dictionary is told without its length and filter. */
  readonly putStream: (id: number, dictionary: string, bytes: Uint8Array) => void;
  /** The same for bytes that anyone may look for in the file. */
  readonly putPlainStream: (id: number, dictionary: string, bytes: Uint8Array) => void;
  /** Writes what still waits, and where everything stands. */
  readonly end: (trailer: Trailer) => void;
}

/** Objects of one file, whose bytes go to `write` in order; `newId` gives numbers that none of them has. */
export function objectsTo(write: (bytes: Uint8Array) => void, newId: () => number): Objects {
  const places = new Places();
  let offset = 0;
  const raw = (bytes: Uint8Array) => {
    write(bytes);
    offset += bytes.length;
  };
  const putPlainStream = (id: number, dictionary: string, bytes: Uint8Array) => {
    places.atOffset(id, offset);
    raw(bytesOf(`${id} 0 obj\n<<${dictionary}/Length ${bytes.length}>>stream\n`));
    raw(bytes);
    raw(bytesOf('\nendstream endobj\n'));
  };
  const putStream = (id: number, dictionary: string, bytes: Uint8Array) =>
    putPlainStream(id, `${dictionary}/Filter/FlateDecode`, deflated(bytes));
  const packed = packedObjects((ids, heads, texts) => {
    const id = newId();
    for (const [index, inner] of ids.entries()) places.inStream(inner, id, index);
    const facts = `/Type/ObjStm/N ${ids.length}/First ${heads.length}`;
    putStream(id, facts, joined([bytesOf(heads), texts]));
  });
  const end = ({ root, info, fileId }: Trailer) => {
    packed.flush();
    const [id, start, hex] = [newId(), offset, `<${hexOf(fileId)}>`];
    places.atOffset(id, start);
    const facts = `/Size ${id + 1}${PLACE_WIDTHS}/Root ${root} 0 R/Info ${info} 0 R/ID[${hex}${hex}]`;
    putStream(id, `/Type/XRef${facts}`, places.upTo(id));
    raw(bytesOf(`startxref\n${start}\n%%EOF\n`));
  };
  return { raw, put: packed.add, putStream, putPlainStream, end };
}

type Flush = (ids: readonly number[], heads: string, texts: Uint8Array) => void;

/** Gathers objects until they are enough for a stream of objects (ISO 32000, 7.5.7). */
function packedObjects(onFull: Flush) {
  const texts = new Operators();
  let ids: number[] = [];
  let heads = '';
  const flush = () => {
    if (ids.length > 0) onFull(ids, heads, texts.written);
    texts.clear();
    [ids, heads] = [[], ''];
  };
  const add = (id: number, text: string) => {
    heads += `${id} ${texts.written.length} `;
    ids.push(id);
    texts.text(`${text}\n`);
    if (ids.length === MOST_TOGETHER || texts.written.length >= ENOUGH_BYTES) flush();
  };
  return { add, flush };
}
