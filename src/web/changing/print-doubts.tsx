// A pack that is not certain is printed only after a clear yes.
import { later } from '../later.ts';
import type { ShownDoubt } from '../making/protocol.ts';
import { words } from './words.ts';

const yes = later(() => import('./print-anyway.tsx'));

export interface PrintDoubtsProps {
  readonly doubts: readonly ShownDoubt[];
  readonly isSure: boolean;
  readonly onChange: (isSure: boolean) => void;
}

export function PrintDoubts({ doubts, isSure, onChange }: PrintDoubtsProps) {
  const there = yes.use(doubts.length > 0);
  if (doubts.length === 0) return null;
  return (
    <div className="change-doubts">
      <p className="warning">{words.notSure(doubts)}</p>
      {there === undefined ? null : <there.PrintAnyway isSure={isSure} onChange={onChange} />}
    </div>
  );
}
