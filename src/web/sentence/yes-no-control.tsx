// A yes or no inside a sentence.
import { useId } from 'react';
import { Switch } from 'react-aria-components/Switch';
import { words } from '../words.ts';

export interface YesNoControlProps {
  readonly label: string;
  readonly value: boolean;
  readonly choices: Readonly<Record<string, string>>;
  readonly objection: string | undefined;
  readonly onChange: (value: boolean) => void;
}

export function YesNoControl({ label, value, choices, objection, onChange }: YesNoControlProps) {
  const note = useId();
  const shown = choices[String(value)] ?? (value ? words.yes : words.no);
  return (
    <span className="control">
      <Switch
        aria-label={label}
        aria-describedby={note}
        className="blank switch"
        isSelected={value}
        onChange={onChange}
      >
        {shown}
      </Switch>
      <wbr />
      <span id={note} className="objection">
        {objection}
      </span>
    </span>
  );
}
