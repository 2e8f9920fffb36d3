// The line at the head that says that a newer version is ready; it takes the place of the line that is always there.
import { type ReactNode, useState, useSyncExternalStore } from 'react';
import { Button } from 'react-aria-components/Button';
import { words } from '../words.ts';
import { nothingHolds } from './holds.ts';
import { carryOver } from './kept.ts';
import type { Newer } from './newer.ts';

export interface NewerLineProps {
  readonly newer: Newer;
  /** What stands here otherwise. */
  readonly children: ReactNode;
}

export function NewerLine({ newer, children }: NewerLineProps) {
  const isReady = useSyncExternalStore(newer.onReady, newer.isReady);
  const [said, setSaid] = useState<'newer' | 'changingOver' | 'newerByHand'>('newer');
  const changeOver = async () => {
    setSaid('changingOver');
    await nothingHolds();
    await newer.takeOver();
    await nothingHolds();
    if (carryOver()) location.reload();
    else setSaid('newerByHand');
  };
  return (
    <p aria-live="polite">
      {isReady ? (
        <span className="newer">
          <span>{words[said]}</span>
          {said === 'newer' ? (
            <Button className="quiet" onPress={() => void changeOver()}>
              {words.changeOver}
            </Button>
          ) : null}
        </span>
      ) : (
        children
      )}
    </p>
  );
}
