// Over the paper: takes the sheet into the hands, and lays it down again.
import { ToggleButton } from 'react-aria-components/ToggleButton';
import { words } from './words.ts';

export interface HandToggleProps {
  readonly isOn: boolean;
  readonly onChange: (isOn: boolean) => void;
}

export function HandToggle({ isOn, onChange }: HandToggleProps) {
  return (
    <ToggleButton className="plain hand-toggle" isSelected={isOn} onChange={onChange}>
      {isOn ? words.done : words.changeByHand}
    </ToggleButton>
  );
}
