// The control for any parameter of any activity, drawn from its specification and its words.
import type { Value } from '../../activities/index.ts';
import type { ParameterCard } from '../making/protocol.ts';
import { ChoiceControl } from './choice-control.tsx';
import { NumberControl } from './number-control.tsx';
import { YesNoControl } from './yes-no-control.tsx';

export interface ParameterControlProps {
  readonly card: ParameterCard;
  readonly value: Value;
  readonly objection: string | undefined;
  readonly onChange: (value: Value) => void;
}

export function ParameterControl({ card, value, objection, onChange }: ParameterControlProps) {
  const { spec, label, choices } = card;
  switch (spec.kind) {
    case 'whole':
      return (
        <NumberControl
          label={label}
          value={Number(value)}
          objection={objection}
          onChange={onChange}
        />
      );
    case 'yes-no':
      return (
        <YesNoControl
          label={label}
          value={value === true}
          choices={choices}
          objection={objection}
          onChange={onChange}
        />
      );
    case 'choice':
      return (
        <ChoiceControl
          label={label}
          value={String(value)}
          choices={spec.values.map((name) => ({ value: name, name: choices[name] ?? name }))}
          objection={objection}
          onChange={onChange}
        />
      );
  }
}
