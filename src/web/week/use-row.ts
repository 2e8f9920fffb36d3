// A child's row from its days; the same object until one of them changes.
import { useMemo } from 'react';
import type { Day, Id } from '../../records/index.ts';
import { type Change, type PlannedDay, twiceInRow } from './moves.ts';
import type { Row } from './row.ts';

export interface RowProps {
  readonly id: Id;
  readonly nickname: string;
  /** Absent until they are read. */
  readonly days: readonly PlannedDay[] | undefined;
  readonly columns: readonly Day[];
  readonly today: Day;
  readonly change: (child: Id, change: Change) => void;
}

export function useRow({ id, nickname, days, columns, today, change }: RowProps): Row | undefined {
  return useMemo(
    () =>
      days && {
        id,
        nickname,
        days,
        today,
        twice: twiceInRow(
          days.filter(({ day }) => columns.includes(day)),
          today,
        ),
        change: (what: Change) => change(id, what),
      },
    [id, nickname, days, columns, today, change],
  );
}
