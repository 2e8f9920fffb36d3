// The yes to printing a pack that is not certain.
import { Checkbox } from 'react-aria-components/Checkbox';
import { words } from './words.ts';

export interface PrintAnywayProps {
  readonly isSure: boolean;
  readonly onChange: (isSure: boolean) => void;
}

export function PrintAnyway({ isSure, onChange }: PrintAnywayProps) {
  return (
    <Checkbox className="change-yes" isSelected={isSure} onChange={onChange}>
      <span className="change-tick" aria-hidden="true" />
      {words.printAnyway}
    </Checkbox>
  );
}
