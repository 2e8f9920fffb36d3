// What every screen about children stands on: their records, whose turn it is, and how to add to them.
import { createContext, useContext } from 'react';
import type { Result } from '../../base/index.ts';
import type { Child, Draft, Entry, Id, Shelf, View } from '../../records/index.ts';
import type { Records } from './use-records.ts';

export interface Ground extends Records {
  /** Which of the two shelves is in view; the invented group only while there is one. */
  readonly shelf: Shelf;
  /** What is in view on it; absent until the records are read. */
  readonly view?: View;
  readonly children: readonly Child[];
  /** The child that the screens are about; absent where there is none. */
  readonly child?: Child;
  /** Makes the screens be about this child, in later visits too. */
  readonly choose: (id: Id) => void;
  /** Adds the drafts on the shelf in view; all of them or none. */
  readonly append: (drafts: readonly Draft[]) => Promise<Result<readonly Entry[]>>;
  /** Asks the browser to keep the records, once in a visit; `append` does so itself. */
  readonly keepForGood: () => void;
  readonly showShelf: (shelf: Shelf) => void;
  /** Deletes the invented group for good, and shows the real shelf. */
  readonly removeDemo: () => Promise<Result<number>>;
  /** Puts an invented group in view; answers why not, in words, or nothing. Absent where none can be made. */
  readonly tryDemo?: () => Promise<string>;
}

export const GroundContext = createContext<Ground | undefined>(undefined);

export function useGround(): Ground {
  const ground = useContext(GroundContext);
  if (ground === undefined) throw new Error('useGround: expected a Ground around the screen');
  return ground;
}
