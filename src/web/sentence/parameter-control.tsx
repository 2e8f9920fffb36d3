// The control for any parameter of any activity, drawn from its specification and its words.
import { memo } from 'react';
import type { Value } from '../../activities/index.ts';
import type { ParameterCard } from '../making/protocol.ts';
import { withChange } from '../recipe/entries.ts';
import type { Edit } from '../recipe/use-recipe.ts';
import { ChoiceParameter } from './choice-parameter.tsx';
import { NumberControl } from './number-control.tsx';
import { YesNoControl } from './yes-no-control.tsx';

export interface ParameterControlProps {
  readonly card: ParameterCard;
  readonly value: Value;
  readonly objection: string | undefined;
  readonly edit: Edit;
}

/** Drawn anew only when it is to show something else. */
export const ParameterControl = memo((props: ParameterControlProps) => {
  const { card, value, objection, edit } = props;
  const { name, spec, label, choices } = card;
  const onChange = (next: Value) => edit((now) => withChange(now, name, next));
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
      return <ChoiceParameter {...props} spec={spec} />;
  }
});
