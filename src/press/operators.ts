// Operators of a content stream as bytes from the start: strings of them would be made, joined and turned into bytes.

/** Longer than most pages. */
const FIRST_BYTES = 65_536;
const [SPACE, MINUS, NOUGHT] = [32, 45, 48];
/** No page is a thousand kilometres wide. */
const MOST = 1e11;

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
    let rest = value;
    if (rest < 0) {
      bytes[this.length++] = MINUS;
      rest = -rest;
    }
    const end = this.length + digitsOf(rest);
    for (let at = end - 1; at >= this.length; at--) {
      const tens = Math.floor(rest / 10);
      bytes[at] = NOUGHT + rest - tens * 10;
      rest = tens;
    }
    bytes[end] = SPACE;
    this.length = end + 1;
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

function digitsOf(value: number): number {
  let digits = 1;
  for (let least = 10; value >= least; least *= 10) digits++;
  return digits;
}
