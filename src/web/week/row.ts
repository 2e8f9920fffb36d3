// What each part of a child's row has to know of it.
import type { Day, Id } from '../../records/index.ts';
import type { Change, PlannedDay } from './moves.ts';

export interface Row {
  readonly id: Id;
  readonly nickname: string;
  /** The days that are known, in view or not, in order. */
  readonly days: readonly PlannedDay[];
  readonly today: Day;
  /** Sheets whose activity is that of the one before, by `sheetKey`. */
  readonly twice: ReadonlySet<string>;
  readonly change: (change: Change) => void;
}
