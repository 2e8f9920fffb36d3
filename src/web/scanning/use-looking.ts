// Looks through the pictures of a camera, one after another, until there is a sheet code in one.
import { type RefObject, useEffect, useEffectEvent, useState } from 'react';
import type { Planner } from '../planning/planner.ts';
import { isSheetCode } from './is-sheet-code.ts';
import { startQrReader } from './qr-reader.ts';

/** Between two pictures: long enough to spare the battery, too short to be waited for (common practice, no source). */
const PAUSE_MS = 100;

export type Sight = 'nothing-yet' | 'another-code' | 'broken';

/** Shows the stream in `view` and calls `onCode` once; says what was seen meanwhile. */
export function useLooking(
  planner: Planner,
  view: RefObject<HTMLVideoElement | null>,
  stream: MediaStream | undefined,
  onCode: (code: string) => void,
): Sight {
  const [sight, setSight] = useState<Sight>('nothing-yet');
  const found = useEffectEvent(onCode);
  useEffect(() => {
    const video = view.current;
    if (stream === undefined || video === null) return undefined;
    let isWanted = true;
    video.srcObject = stream;
    const reader = startQrReader();
    const look = async () => {
      for (; isWanted; await pause()) {
        const picture = await pictureOf(video);
        if (picture === undefined) continue;
        const reading = await reader.read(picture);
        const isOurs = reading.kind === 'text' && (await isSheetCode(planner, reading.text));
        if (!isWanted) return;
        if (isOurs) return found(reading.text);
        if (reading.kind === 'broken') return setSight('broken');
        if (reading.kind === 'text') setSight('another-code');
      }
    };
    void look();
    return () => {
      isWanted = false;
      reader.stop();
      video.srcObject = null;
    };
  }, [planner, view, stream]);
  return sight;
}

function pause(): Promise<void> {
  return new Promise((done) => setTimeout(done, PAUSE_MS));
}

/** Undefined while the camera has sent nothing yet, and where it stops at this moment. */
async function pictureOf(video: HTMLVideoElement): Promise<ImageBitmap | undefined> {
  if (video.readyState < video.HAVE_CURRENT_DATA) return undefined;
  return createImageBitmap(video).catch(() => undefined);
}
