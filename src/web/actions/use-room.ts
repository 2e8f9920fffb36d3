// Whether a group's pack asks for more equally hard sheets than there are, told before anything is pressed.
import { useEffect, useRef, useState } from 'react';
import { sentencesOf } from '../making/reply-form.ts';
import type { RoomAsked } from '../planning/cards.ts';
import type { Planner } from '../planning/planner.ts';

/** The sentence; empty as long as nothing speaks against it, is asked for, or is known. */
export function useRoom(planner: Planner, asked: RoomAsked | undefined): string {
  const [told, setTold] = useState({ key: '', sentence: '' });
  const before = useRef<Promise<void>>(Promise.resolve());
  const key = asked === undefined ? '' : JSON.stringify(asked);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the text says whether it asks for anything else
  useEffect(() => {
    if (asked === undefined) return;
    let isWanted = true;
    // One at a time: what was asked for and changed again meanwhile is never tried.
    before.current = before.current.then(async () => {
      if (!isWanted) return;
      const reply = await planner.ask('room', asked);
      if (isWanted) setTold({ key, sentence: reply.ok ? '' : sentencesOf(reply.objections) });
    });
    return () => {
      isWanted = false;
    };
  }, [planner, key]);
  return told.key === key ? told.sentence : '';
}
