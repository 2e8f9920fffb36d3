// A few choices side by side, one tap each; what is chosen carries a tick and can be let go of again.
import { useId } from 'react';
import { ToggleButton } from 'react-aria-components/ToggleButton';
import { ToggleButtonGroup } from 'react-aria-components/ToggleButtonGroup';

export interface ChipsProps<T extends string> {
  readonly label: string;
  readonly help?: string;
  readonly names: Readonly<Record<T, string>>;
  readonly chosen: readonly T[];
  readonly onChange: (chosen: readonly T[]) => void;
  readonly several?: boolean;
  /** Whether one always stays chosen. */
  readonly isNeeded?: boolean;
  readonly isDisabled?: boolean;
}

export function Chips<T extends string>(props: ChipsProps<T>) {
  const { label, help, names, chosen, onChange, several = false } = props;
  const { isNeeded = false, isDisabled = false } = props;
  const id = useId();
  const all = Object.entries(names) as [T, string][];
  return (
    <div className="field">
      <span id={`${id}-label`} className="field-label">
        {label}
      </span>
      <ToggleButtonGroup
        className="chips"
        aria-labelledby={`${id}-label`}
        {...(help === undefined ? {} : { 'aria-describedby': `${id}-help` })}
        selectionMode={several ? 'multiple' : 'single'}
        disallowEmptySelection={isNeeded}
        isDisabled={isDisabled}
        selectedKeys={chosen}
        onSelectionChange={(keys) => onChange(all.flatMap(([key]) => (keys.has(key) ? [key] : [])))}
      >
        {all.map(([key, name]) => (
          <ToggleButton key={key} id={key} className="chip">
            {name}
          </ToggleButton>
        ))}
      </ToggleButtonGroup>
      {help === undefined ? null : (
        <p id={`${id}-help`} className="help">
          {help}
        </p>
      )}
    </div>
  );
}
