// The panel with the picture of the camera; open only while the camera is held.
import { useEffect, useEffectEvent, useRef } from 'react';
import { Button } from 'react-aria-components/Button';
import { Heading } from 'react-aria-components/Heading';
import type { Planner } from '../planning/planner.ts';
import { type Camera, useCamera } from './use-camera.ts';
import { type Sight, useLooking } from './use-looking.ts';
import { words } from './words.ts';

export interface CameraPanelProps {
  readonly planner: Planner;
  readonly onCode: (code: string) => void;
  readonly onOutOfSight: () => void;
  readonly onClose: () => void;
}

export function CameraPanel({ planner, onCode, onOutOfSight, onClose }: CameraPanelProps) {
  const camera = useCamera();
  const view = useRef<HTMLVideoElement>(null);
  const sight = useLooking(
    planner,
    view,
    camera.kind === 'live' ? camera.stream : undefined,
    onCode,
  );
  useWhenHidden(onOutOfSight);
  return (
    <>
      <Heading slot="title" className="drawer-title">
        {words.camera}
      </Heading>
      {camera.kind === 'absent' ? null : (
        <video
          ref={view}
          className="camera-view"
          aria-label={words.picture}
          autoPlay
          muted
          playsInline
        />
      )}
      <p aria-live="polite">{saidOf(camera, sight)}</p>
      <Button className="plain" onPress={onClose}>
        {words.close}
      </Button>
    </>
  );
}

function saidOf(camera: Camera, sight: Sight): string {
  if (camera.kind === 'absent') return words.noCamera[camera.why];
  if (camera.kind === 'starting') return words.starting;
  if (sight === 'broken') return words.readerBroken;
  return sight === 'another-code' ? words.otherInView : words.hold;
}

function useWhenHidden(tell: () => void): void {
  const hidden = useEffectEvent(tell);
  useEffect(() => {
    const look = () => {
      if (document.visibilityState === 'hidden') hidden();
    };
    document.addEventListener('visibilitychange', look);
    return () => document.removeEventListener('visibilitychange', look);
  }, []);
}
