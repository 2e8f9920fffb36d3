// The main part of a screen about children once the records are read, or why they cannot be.
import { Fragment, type ReactNode } from 'react';
import { Button } from 'react-aria-components/Button';
import type { View } from '../../records/index.ts';
import { words as shell } from '../words.ts';
import { useGround } from './use-ground.ts';
import { words } from './words.ts';

export interface RecordsMainProps {
  readonly className: string;
  /** Drawn anew for the other shelf, so that nothing of one is left on the screen of the other. */
  readonly children: (view: View) => ReactNode;
}

export function RecordsMain({ className, children }: RecordsMainProps) {
  const { objection, view, shelf, read } = useGround();
  return (
    <main className={className}>
      {objection === '' ? null : (
        <div className="fault" role="alert">
          <p>{objection}</p>
          <Button className="plain" onPress={() => void read()}>
            {shell.tryAgain}
          </Button>
        </div>
      )}
      {view === undefined ? (
        <p aria-busy="true">{objection === '' ? words.loading : ''}</p>
      ) : (
        <Fragment key={shelf}>{children(view)}</Fragment>
      )}
    </main>
  );
}
