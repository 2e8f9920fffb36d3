// What a file says of itself in its first bytes, before anything of it is decoded.

export type ImageFault = 'empty' | 'drawing' | 'unknown' | 'too-large';

export interface ImageHeader {
  readonly kind: 'png' | 'jpeg' | 'gif' | 'webp' | 'bmp' | 'avif' | 'heic';
  /** In pixels; absent where the first bytes do not say. */
  readonly width?: number;
  readonly height?: number;
}

/** More than 40 million pixels take more memory to decode than many phones have to spare. */
export const MOST_PIXELS = 40_000_000;
export const HEADER_BYTES = 262_144;

/** Of the first `HEADER_BYTES` of a file, or why it is none that is taken. */
export function readHeader(bytes: Uint8Array): ImageHeader | ImageFault {
  if (bytes.length === 0) return 'empty';
  const header = headerOf(bytes);
  if (header === undefined) return isDrawing(bytes) ? 'drawing' : 'unknown';
  return (header.width ?? 0) * (header.height ?? 0) > MOST_PIXELS ? 'too-large' : header;
}

function headerOf(bytes: Uint8Array): ImageHeader | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const says = (at: number, text: string) =>
    [...text].every((letter, index) => bytes[at + index] === letter.charCodeAt(0));
  if (says(1, 'PNG') && bytes.length >= 24) {
    return { kind: 'png', width: view.getUint32(16), height: view.getUint32(20) };
  }
  if (says(0, 'GIF8') && bytes.length >= 10) {
    return { kind: 'gif', width: view.getUint16(6, true), height: view.getUint16(8, true) };
  }
  if (says(0, 'BM') && bytes.length >= 26) {
    const height = Math.abs(view.getInt32(22, true));
    return { kind: 'bmp', width: view.getUint32(18, true), height };
  }
  if (says(0, 'RIFF') && says(8, 'WEBP') && bytes.length >= 30) return webpHeader(view, says);
  if (bytes[0] === 0xff && bytes[1] === 0xd8) return { kind: 'jpeg', ...jpegSize(view) };
  if (says(4, 'ftyp')) return boxedHeader(view, says);
  return undefined;
}

function webpHeader(view: DataView, says: (at: number, text: string) => boolean): ImageHeader {
  const kind = 'webp';
  if (says(12, 'VP8X')) {
    const three = (at: number) => view.getUint16(at, true) + 65_536 * view.getUint8(at + 2) + 1;
    return { kind, width: three(24), height: three(27) };
  }
  if (says(12, 'VP8L')) {
    const bits = view.getUint32(21, true);
    return { kind, width: (bits & 0x3fff) + 1, height: ((bits >>> 14) & 0x3fff) + 1 };
  }
  return {
    kind,
    width: view.getUint16(26, true) & 0x3fff,
    height: view.getUint16(28, true) & 0x3fff,
  };
}

/** Of the frame header (ITU-T T.81, markers C0 to CF but for C4, C8 and CC). */
function jpegSize(view: DataView): Pick<ImageHeader, 'width' | 'height'> {
  for (let at = 2; at + 9 < view.byteLength; ) {
    if (view.getUint8(at) !== 0xff) return {};
    const marker = view.getUint8(at + 1);
    const isFrame = marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
    if (isFrame) return { height: view.getUint16(at + 5), width: view.getUint16(at + 7) };
    at += 2 + view.getUint16(at + 2);
  }
  return {};
}

/** AVIF and HEIC: the largest `ispe` (ISO/IEC 23008-12) of the images inside, tiles among them. */
function boxedHeader(
  view: DataView,
  says: (at: number, text: string) => boolean,
): ImageHeader | undefined {
  const isAvif = says(8, 'avi');
  if (!isAvif && !['hei', 'hev', 'mif1', 'msf1'].some((brand) => says(8, brand))) return undefined;
  let [width, height] = [0, 0];
  for (let at = 12; at + 16 <= view.byteLength; at++) {
    if (!says(at, 'ispe')) continue;
    width = Math.max(width, view.getUint32(at + 8));
    height = Math.max(height, view.getUint32(at + 12));
  }
  return { kind: isAvif ? 'avif' : 'heic', ...(width > 0 ? { width, height } : {}) };
}

/** SVG, which may hold scripts and fetch things: it is told by its beginning, and never opened. */
function isDrawing(bytes: Uint8Array): boolean {
  const text = new TextDecoder().decode(bytes.subarray(0, 4096)).trimStart().toLowerCase();
  return text.startsWith('<') && text.includes('<svg');
}
