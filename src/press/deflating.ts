// How streams are packed: by the same code in Node and in a browser, so that both give the same bytes.
import { zlibSync } from 'fflate';

/** The quickest: level 4 makes pages 3 % smaller, and a pack takes a seventh longer (`docs/benchmarks.md`). */
const LEVEL = 1;

/** In the format of ZLIB (RFC 1950), as the filter FlateDecode reads it. */
export function deflated(bytes: Uint8Array): Uint8Array {
  return zlibSync(bytes, { level: LEVEL });
}
