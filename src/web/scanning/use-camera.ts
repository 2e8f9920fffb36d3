// The camera, held from when a component comes until it leaves.
import { useEffect, useState } from 'react';

export type WhyNoCamera = 'not-secure' | 'none' | 'refused' | 'stopped';

export type Camera =
  | { readonly kind: 'starting' }
  | { readonly kind: 'live'; readonly stream: MediaStream }
  | { readonly kind: 'absent'; readonly why: WhyNoCamera };

/** The one that looks away from the person, where there are two; in pixels what most have. */
const WANTED: MediaStreamConstraints = {
  video: { facingMode: 'environment', width: { ideal: 1920 }, height: { ideal: 1080 } },
};

export function useCamera(): Camera {
  const [camera, setCamera] = useState<Camera>({ kind: 'starting' });
  useEffect(() => {
    let letGo = () => {};
    let isWanted = true;
    const missing = (why: WhyNoCamera) => {
      if (isWanted) setCamera({ kind: 'absent', why });
    };
    startCamera().then(
      (stream) => {
        letGo = () => {
          for (const track of stream.getTracks()) track.stop();
        };
        // The person may have gone while the browser still asked for leave.
        if (!isWanted) return letGo();
        for (const track of stream.getTracks()) {
          track.addEventListener('ended', () => missing('stopped'));
        }
        setCamera({ kind: 'live', stream });
      },
      (fault) => missing(whyOf(fault)),
    );
    return () => {
      isWanted = false;
      letGo();
    };
  }, []);
  return camera;
}

/** Rejects with a DOMException of the browser, or like one. */
async function startCamera(): Promise<MediaStream> {
  // The types say that it is always there; on an address that is not secure it is not.
  const devices: MediaDevices | undefined = navigator.mediaDevices;
  if (devices === undefined) throw new DOMException('no media devices', 'NotFoundError');
  return devices.getUserMedia(WANTED);
}

function whyOf(fault: unknown): WhyNoCamera {
  if (!window.isSecureContext) return 'not-secure';
  const name = fault instanceof DOMException ? fault.name : '';
  if (name === 'NotAllowedError' || name === 'SecurityError') return 'refused';
  // A browser that can meet no wish has no camera at all: none of ours is a must.
  return name === 'NotFoundError' || name === 'OverconstrainedError' ? 'none' : 'stopped';
}
