// A pack that is not certain is printed only after a clear yes.
import { later } from '../later.ts';
import type { ShownDoubt } from '../making/protocol.ts';
import type { PrintAnywayProps } from './print-anyway.tsx';
import { words } from './words.ts';

const yes = later(() => import('./print-anyway.tsx'));

interface PrintDoubtsProps extends PrintAnywayProps {
  readonly doubts: readonly ShownDoubt[];
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
