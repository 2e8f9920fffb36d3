// A line or a box of text with its label, why it is asked, and what is wrong with it.
import { FieldError } from 'react-aria-components/FieldError';
import { Input } from 'react-aria-components/Input';
import { Label } from 'react-aria-components/Label';
import { Text } from 'react-aria-components/Text';
import { TextArea } from 'react-aria-components/TextArea';
import { TextField as Field } from 'react-aria-components/TextField';

export interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly help?: string;
  readonly objection?: string | undefined;
  readonly type?: 'text' | 'month' | 'date';
  readonly most?: number;
  readonly isLong?: boolean;
  readonly isNumber?: boolean;
  readonly isCode?: boolean;
  readonly latest?: string;
  readonly autoFocus?: boolean;
  readonly onBlur?: () => void;
}

export function TextField(props: TextFieldProps) {
  const { label, value, onChange, help, objection = '', type = 'text', most, latest } = props;
  return (
    <Field
      className="field"
      autoComplete="off"
      value={value}
      onChange={onChange}
      isInvalid={objection !== ''}
      validationBehavior="aria"
      autoFocus={props.autoFocus ?? false}
      inputMode={props.isNumber ? 'numeric' : 'text'}
      spellCheck={props.isCode ? 'false' : 'true'}
      {...(most === undefined ? {} : { maxLength: most })}
      {...(props.onBlur === undefined ? {} : { onBlur: props.onBlur })}
    >
      <Label className="field-label">{label}</Label>
      {props.isLong ? (
        <TextArea className="line" rows={3} />
      ) : (
        <Input className={props.isCode ? 'line code-line-in' : 'line'} type={type} max={latest} />
      )}
      {help === undefined ? null : (
        <Text slot="description" className="help">
          {help}
        </Text>
      )}
      <FieldError className="objection">{objection}</FieldError>
    </Field>
  );
}
