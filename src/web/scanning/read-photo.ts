// The sheet code in a photo, or why there is none, in words.
import type { Planner } from '../planning/planner.ts';
import { isSheetCode } from './is-sheet-code.ts';
import type { QrReader, Reading } from './qr-reader.ts';
import { words } from './words.ts';

export interface PhotoRead {
  readonly code?: string;
  /** What came of it. */
  readonly words: string;
}

const WITHOUT_TEXT = {
  nothing: 'nothingInPhoto',
  'no-picture': 'noPicture',
  broken: 'readerBroken',
} as const satisfies Readonly<Record<Exclude<Reading['kind'], 'text'>, keyof typeof words>>;

export async function readPhoto(
  photo: Blob,
  reader: QrReader,
  planner: Planner,
): Promise<PhotoRead> {
  const reading = await reader.read(photo);
  if (reading.kind !== 'text') return { words: words[WITHOUT_TEXT[reading.kind]] };
  return (await isSheetCode(planner, reading.text))
    ? { code: reading.text, words: words.readFromPhoto }
    : { words: words.otherInPhoto };
}
