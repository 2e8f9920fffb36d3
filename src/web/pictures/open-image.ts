// Opens a file as a picture of modest size, or says why not; nothing in it is ever run or fetched.
import { HEADER_BYTES, type ImageFault, readHeader } from './image-header.ts';

export type OpenFault = ImageFault | 'heic' | 'broken';

/** The longer side of what is cropped, in pixels: it is simplified to far fewer. */
const MOST_SIDE = 1024;

export async function openImage(file: Blob): Promise<ImageBitmap | OpenFault> {
  const header = readHeader(new Uint8Array(await file.slice(0, HEADER_BYTES).arrayBuffer()));
  if (typeof header === 'string') return header;
  const { width = 0, height = 0 } = header;
  const isLarge = Math.max(width, height) > MOST_SIDE;
  const share = MOST_SIDE / Math.max(width, height, 1);
  try {
    // A photo may be stored on its side: of one length alone the browser keeps the other in proportion.
    return await createImageBitmap(
      file,
      isLarge ? { resizeWidth: Math.max(1, Math.round(width * share)), resizeQuality: 'high' } : {},
    );
  } catch {
    return header.kind === 'heic' ? 'heic' : 'broken';
  }
}
