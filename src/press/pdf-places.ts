// Where the objects of a file stand, in the bytes of a cross-reference stream (ISO 32000, 7.5.8).

/** Kind, place, index. */
const WIDTHS = [1, 4, 2] as const;
const [KIND_AT, PLACE_AT, INDEX_AT, BYTES] = [0, 1, 5, 7];
const [AT_OFFSET, IN_STREAM] = [1, 2];

/** What a dictionary says of the widths of its columns. */
export const PLACE_WIDTHS = `/W[${WIDTHS.join(' ')}]`;

/** Seven bytes an object, by its number from 1. */
export class Places {
  private table = new DataView(new ArrayBuffer(4096 * BYTES));

  /** `offset` is counted in bytes from the start of the file. */
  atOffset(id: number, offset: number): void {
    this.set(id, AT_OFFSET, offset, 0);
  }

  /** The `index`th of those packed into the stream. */
  inStream(id: number, stream: number, index: number): void {
    this.set(id, IN_STREAM, stream, index);
  }

  /** Of all objects up to that number; number 0 is free, as the standard wants. */
  upTo(id: number): Uint8Array {
    const bytes = new Uint8Array(this.table.buffer, 0, (id + 1) * BYTES);
    bytes.set([0, 0, 0, 0, 0, 0xff, 0xff]);
    return bytes;
  }

  private set(id: number, kind: number, place: number, index: number): void {
    const at = id * BYTES;
    if (at + BYTES > this.table.byteLength) this.makeRoom(at + BYTES);
    this.table.setUint8(at + KIND_AT, kind);
    this.table.setUint32(at + PLACE_AT, place);
    this.table.setUint16(at + INDEX_AT, index);
  }

  private makeRoom(bytes: number): void {
    const roomier = new Uint8Array(2 * bytes);
    roomier.set(new Uint8Array(this.table.buffer));
    this.table = new DataView(roomier.buffer);
  }
}
