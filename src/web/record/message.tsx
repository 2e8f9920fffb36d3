// What was just done, with a way to take it back; it takes the focus, so that it is heard and at hand.
import { useEffect, useRef } from 'react';
import { Button } from 'react-aria-components/Button';
import type { Id } from '../../records/index.ts';
import { words } from './words.ts';

export interface Said {
  readonly text: string;
  /** The entry that can be taken back. */
  readonly undo?: Id;
  readonly isTakenBack?: boolean;
}

export interface MessageProps {
  readonly said: Said | undefined;
  readonly onUndo: (said: Said) => void;
}

export function Message({ said, onUndo }: MessageProps) {
  const place = useRef<HTMLOutputElement>(null);
  useEffect(() => {
    if (said !== undefined) place.current?.focus();
  }, [said]);
  return (
    <output ref={place} className="message" tabIndex={-1}>
      <span>{said?.text}</span>
      {said?.undo === undefined ? null : (
        <Button className="plain" onPress={() => onUndo(said)}>
          {said.isTakenBack ? words.bringBack : words.undo}
        </Button>
      )}
    </output>
  );
}
