// A font as it comes in a package (WOFF 1.0, W3C Recommendation of 13 December 2012) unpacked to the TrueType file in it.
import { unzlibSync } from 'fflate';

const WOFF = 0x774f4646;
const WOFF_HEAD = 44;
const WOFF_ENTRY = 20;
const HEAD = 12;
const ENTRY = 16;

/** The TrueType file; one that is not packed comes back as it is. */
export function unpackFont(file: Uint8Array): Uint8Array {
  const packed = new DataView(file.buffer, file.byteOffset, file.byteLength);
  if (packed.getUint32(0) !== WOFF) return file;
  const tables = Array.from({ length: packed.getUint16(12) }, (_, index) =>
    readTable(file, packed, WOFF_HEAD + index * WOFF_ENTRY),
  );
  return writeFont(packed.getUint32(4), tables);
}

interface Table {
  readonly tag: number;
  readonly checksum: number;
  readonly bytes: Uint8Array;
}

function readTable(file: Uint8Array, packed: DataView, at: number): Table {
  const [offset, stored, length] = [4, 8, 12].map((step) => packed.getUint32(at + step));
  const bytes = file.subarray(offset, (offset ?? 0) + (stored ?? 0));
  return {
    tag: packed.getUint32(at),
    checksum: packed.getUint32(at + 16),
    // A table that would not become shorter is stored as it is.
    bytes: stored === length ? bytes : unzlibSync(bytes),
  };
}

/** The tables behind one another, each begun at a multiple of four bytes (OpenType, "Organization of an OpenType font"). */
function writeFont(flavour: number, tables: readonly Table[]): Uint8Array {
  const padded = (length: number) => Math.ceil(length / 4) * 4;
  const head = HEAD + tables.length * ENTRY;
  const font = new Uint8Array(tables.reduce((sum, { bytes }) => sum + padded(bytes.length), head));
  const view = new DataView(font.buffer);
  const steps = Math.floor(Math.log2(tables.length));
  const range = 2 ** steps * ENTRY;
  view.setUint32(0, flavour);
  for (const [index, field] of [
    tables.length,
    range,
    steps,
    tables.length * ENTRY - range,
  ].entries())
    view.setUint16(4 + index * 2, field);
  let at = head;
  for (const [index, { tag, checksum, bytes }] of tables.entries()) {
    for (const [place, field] of [tag, checksum, at, bytes.length].entries())
      view.setUint32(HEAD + index * ENTRY + place * 4, field);
    font.set(bytes, at);
    at += padded(bytes.length);
  }
  return font;
}
