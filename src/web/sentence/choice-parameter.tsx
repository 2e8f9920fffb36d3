// The control for a parameter that is a choice among names.
import { memo } from 'react';
import type { ChoiceParameter as ChoiceSpec, Value } from '../../activities/index.ts';
import type { ParameterCard } from '../making/protocol.ts';
import { withChange } from '../recipe/entries.ts';
import type { Edit } from '../recipe/use-recipe.ts';
import { ChoiceControl } from './choice-control.tsx';

export interface ChoiceParameterProps {
  readonly card: ParameterCard;
  readonly spec: ChoiceSpec;
  readonly value: Value;
  readonly objection: string | undefined;
  readonly edit: Edit;
}

/** Drawn anew only when it is to show something else. */
export const ChoiceParameter = memo((props: ChoiceParameterProps) => {
  const { card, spec, value, objection, edit } = props;
  const { name, label, choices } = card;
  return (
    <ChoiceControl
      label={label}
      value={String(value)}
      choices={spec.values.map((each) => ({ value: each, name: choices[each] ?? each }))}
      objection={objection}
      onChange={(next) => edit((now) => withChange(now, name, next))}
    />
  );
});
