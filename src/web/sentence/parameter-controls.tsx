// The controls for the parameters of the present activity, each with the value that is in force or was entered.
import type { ReactNode } from 'react';
import type { ParameterCard } from '../making/protocol.ts';
import { ParameterControl } from './parameter-control.tsx';
import type { ControlsProps } from './shell-controls.tsx';

export function parameterControl(props: ControlsProps, parameter: ParameterCard): ReactNode {
  const { entries, inForce, edit, objectionTo } = props;
  const { name } = parameter;
  return (
    <ParameterControl
      card={parameter}
      value={entries.changes[name] ?? inForce[name] ?? ''}
      objection={objectionTo(name)}
      edit={edit}
    />
  );
}
