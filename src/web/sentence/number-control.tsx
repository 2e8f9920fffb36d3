// A number inside a sentence: typed in place, or stepped. It keeps any number that is entered; the core judges it.
import { Button } from 'react-aria-components/Button';
import { FieldError } from 'react-aria-components/FieldError';
import { Group } from 'react-aria-components/Group';
import { Input } from 'react-aria-components/Input';
import { NumberField } from 'react-aria-components/NumberField';
import { words } from '../words.ts';

export interface NumberControlProps {
  readonly label: string;
  readonly value: number;
  /** Follows the number: "4 tasks". */
  readonly noun?: string;
  readonly objection: string | undefined;
  readonly onChange: (value: number) => void;
}

export function NumberControl({ label, value, noun, objection, onChange }: NumberControlProps) {
  return (
    <NumberField
      aria-label={label}
      className="control"
      value={value}
      formatOptions={{ useGrouping: false }}
      isInvalid={objection !== undefined}
      validationBehavior="aria"
      onChange={onChange}
    >
      <Group className="blank number">
        {/* biome-ignore lint/a11y/noLabelWithoutControl: Input is the control */}
        <label>
          <Input size={1} onFocus={(event) => event.currentTarget.select()} />
          {noun === undefined ? null : <span>{`\u00a0${noun}`}</span>}
        </label>
        <span className="steppers">
          <Button slot="decrement" aria-label={words.less(label)}>
            −
          </Button>
          <Button slot="increment" aria-label={words.moreOf(label)}>
            +
          </Button>
        </span>
      </Group>
      <wbr />
      <FieldError className="objection">{objection}</FieldError>
    </NumberField>
  );
}
