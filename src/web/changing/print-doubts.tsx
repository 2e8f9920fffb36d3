// A pack that is not certain is printed only after a clear yes.
import { Checkbox } from 'react-aria-components/Checkbox';
import type { ShownDoubt } from '../making/protocol.ts';
import { words } from './words.ts';

export interface PrintDoubtsProps {
  readonly doubts: readonly ShownDoubt[];
  readonly isSure: boolean;
  readonly onChange: (isSure: boolean) => void;
}

export function PrintDoubts({ doubts, isSure, onChange }: PrintDoubtsProps) {
  if (doubts.length === 0) return null;
  return (
    <div className="change-doubts">
      <p className="warning">{words.notSure(doubts)}</p>
      <Checkbox className="change-yes" isSelected={isSure} onChange={onChange}>
        <span className="change-tick" aria-hidden="true" />
        {words.printAnyway}
      </Checkbox>
    </div>
  );
}
