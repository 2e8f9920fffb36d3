// Operators of a content stream as bytes from the start: strings of them would be made, joined and turned into bytes.

/** Longer than most pages. */
const FIRST_BYTES = 65_536;
const [SPACE, MINUS, NOUGHT] = [32, 45, 48];
/** No page is a thousand kilometres wide. */
const MOST = 1e11;
/** Most lengths on a page, in hundredths of a millimetre, are below this. */
const SMALL = 100_000;

/** Grows as it is written into, and is used again for the next page. */
export class Operators {
  private bytes = new Uint8Array(FIRST_BYTES);
  private length = 0;

  /** Words of ASCII, as they are. */
  text(ascii: string): void {
    this.makeRoom(ascii.length);
    for (let at = 0; at < ascii.length; at++) this.bytes[this.length++] = ascii.charCodeAt(at);
  }

  /** A whole number and a space behind it; a defect if it is none. */
  whole(value: number): void {
    if (!(Math.abs(value) < MOST)) {
      throw new Error(`press › number: expected a finite one, got ${value}`);
    }
    this.makeRoom(16);
    const { bytes } = this;
    let at = this.length;
    if (value < 0) bytes[at++] = MINUS;
    const size = Math.abs(value);
    at = size < SMALL ? smallAt(bytes, at, size | 0) : largeAt(bytes, at, size);
    bytes[at] = SPACE;
    this.length = at + 1;
  }

  /** What was written since it was cleared, until more is. */
  get written(): Uint8Array {
    return this.bytes.subarray(0, this.length);
  }

  clear(): void {
    this.length = 0;
  }

  private makeRoom(more: number): void {
    if (this.length + more <= this.bytes.length) return;
    const roomier = new Uint8Array(2 * (this.length + more));
    roomier.set(this.written);
    this.bytes = roomier;
  }
}

/** Writes a number below `SMALL`, in whole numbers of the engine, which are much quicker; tells where it ends. */
function smallAt(bytes: Uint8Array, start: number, value: number): number {
  const more = value < 10 ? 0 : value < 100 ? 1 : value < 1000 ? 2 : value < 10_000 ? 3 : 4;
  let rest = value;
  for (let at = start + more; at > start; at--) {
    const tens = (rest / 10) | 0;
    bytes[at] = NOUGHT + rest - tens * 10;
    rest = tens;
  }
  bytes[start] = NOUGHT + rest;
  return start + more + 1;
}

function largeAt(bytes: Uint8Array, start: number, value: number): number {
  const digits = String(value);
  for (let at = 0; at < digits.length; at++) bytes[start + at] = digits.charCodeAt(at);
  return start + digits.length;
}
