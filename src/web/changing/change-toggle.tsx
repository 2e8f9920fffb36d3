// Over the paper: begins changing the sheet, and ends it.
import { ToggleButton } from 'react-aria-components/ToggleButton';
import { words } from './words.ts';

export interface ChangeToggleProps {
  readonly isOn: boolean;
  /** Where no page lies there yet. */
  readonly isDisabled: boolean;
  readonly onChange: (isOn: boolean) => void;
}

export function ChangeToggle({ isOn, isDisabled, onChange }: ChangeToggleProps) {
  return (
    <ToggleButton
      className="plain change-toggle"
      isSelected={isOn}
      isDisabled={isDisabled}
      onChange={onChange}
    >
      {isOn ? words.done : words.change}
    </ToggleButton>
  );
}
