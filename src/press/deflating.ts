// How streams are packed: by the same code in Node and in a browser, so that both give the same bytes.
import { zlibSync } from 'fflate';

/** The quickest: the usual level takes half as long again for pages that are 3 % smaller (`docs/benchmarks.md`). */
const LEVEL = 1;

/** In the format of ZLIB (RFC 1950), as the filter FlateDecode reads it. */
export function deflated(bytes: Uint8Array): Uint8Array {
  return zlibSync(bytes, { level: LEVEL });
}
