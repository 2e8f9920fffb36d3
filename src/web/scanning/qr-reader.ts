// Has pictures read for a QR code by a worker of its own, which is fetched only when there is one to read.

/** A photo as a file, or a frame of the camera. */
export type Picture = Blob | ImageBitmap;

export type Reading =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'nothing' }
  /** The file is not a picture that the browser knows. */
  | { readonly kind: 'no-picture' }
  /** The reader itself does not run here. */
  | { readonly kind: 'broken' };

export interface QrReader {
  /** Reads one picture after another; a frame is given away with it. Never settles once stopped. */
  readonly read: (picture: Picture) => Promise<Reading>;
  readonly stop: () => void;
}

export function startQrReader(): QrReader {
  const worker = new Worker(new URL('./qr.worker.ts', import.meta.url), { type: 'module' });
  let isBroken = false;
  let settle: (reading: Reading) => void = () => undefined;
  worker.addEventListener('message', (event: MessageEvent<Reading>) => settle(event.data));
  worker.addEventListener('error', () => {
    isBroken = true;
    settle({ kind: 'broken' });
  });
  return {
    read: (picture) =>
      new Promise((done) => {
        if (isBroken) return done({ kind: 'broken' });
        settle = done;
        worker.postMessage(picture, picture instanceof ImageBitmap ? [picture] : []);
      }),
    stop: () => worker.terminate(),
  };
}
