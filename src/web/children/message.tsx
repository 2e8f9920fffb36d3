// What was just done, with a way to take it back; it takes the focus, so that it is heard and at hand.
import { useEffect, useRef } from 'react';
import { Button } from 'react-aria-components/Button';
import type { Said, SaidState } from './use-said.ts';
import { words } from './words.ts';

export interface MessageProps {
  readonly said: Said | undefined;
  /** Absent where nothing can be taken back. */
  readonly undo?: SaidState['undo'];
}

export function Message({ said, undo }: MessageProps) {
  const place = useRef<HTMLOutputElement>(null);
  useEffect(() => {
    if (said !== undefined) place.current?.focus();
  }, [said]);
  const entries = said?.undo;
  return (
    <output ref={place} className="message" tabIndex={-1}>
      <span>{said?.text}</span>
      {entries === undefined || undo === undefined ? null : (
        <Button className="plain" onPress={() => void undo(entries, said?.isTakenBack)}>
          {said?.isTakenBack ? words.bringBack : words.undo}
        </Button>
      )}
    </output>
  );
}
