// The yes to printing a pack that is not certain.
import { Checkbox } from 'react-aria-components/Checkbox';
import type { PrintDoubtsProps } from './print-doubts.tsx';
import { words } from './words.ts';

export function PrintAnyway({ isSure, onChange }: Omit<PrintDoubtsProps, 'doubts'>) {
  return (
    <Checkbox className="change-yes" isSelected={isSure} onChange={onChange}>
      <span className="change-tick" aria-hidden="true" />
      {words.printAnyway}
    </Checkbox>
  );
}
