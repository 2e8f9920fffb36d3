// The form in which the code of a sheet is typed; a code that cannot be read stays to be mended.
import type { RefObject } from 'react';
import { Button } from 'react-aria-components/Button';
import { Dialog } from 'react-aria-components/Dialog';
import { FieldError } from 'react-aria-components/FieldError';
import { Form } from 'react-aria-components/Form';
import { Heading } from 'react-aria-components/Heading';
import { Input } from 'react-aria-components/Input';
import { Label } from 'react-aria-components/Label';
import { Popover } from 'react-aria-components/Popover';
import { Text } from 'react-aria-components/Text';
import { TextField } from 'react-aria-components/TextField';
import { words } from '../words.ts';

export interface CodeFormProps {
  /** What it opened from. */
  readonly trigger: RefObject<HTMLElement | null>;
  readonly isOpen: boolean;
  readonly onOpenChange: (isOpen: boolean) => void;
  readonly code: string;
  readonly onChange: (code: string) => void;
  readonly objection: string | undefined;
  readonly onDone: () => void;
}

export function CodeForm(props: CodeFormProps) {
  const { trigger, isOpen, onOpenChange, code, onChange, objection, onDone } = props;
  return (
    <Popover
      className="drawer"
      placement="top start"
      triggerRef={trigger}
      isOpen={isOpen}
      onOpenChange={onOpenChange}
    >
      <Dialog className="code-form">
        <Form
          validationBehavior="aria"
          onSubmit={(event) => {
            event.preventDefault();
            onDone();
          }}
        >
          <Heading slot="title" className="code-title">
            {words.openByCode}
          </Heading>
          <TextField
            autoFocus
            autoComplete="off"
            spellCheck="false"
            value={code}
            isInvalid={objection !== undefined}
            onChange={onChange}
          >
            <Label>{words.codeField}</Label>
            <Input className="code-input" />
            <Text slot="description" className="help">
              {words.codeHelp}
            </Text>
            <FieldError className="objection">{objection}</FieldError>
          </TextField>
          <div className="row">
            <Button type="submit" className="plain">
              {words.open}
            </Button>
            <Button className="quiet" onPress={() => onOpenChange(false)}>
              {words.cancel}
            </Button>
          </div>
        </Form>
      </Dialog>
    </Popover>
  );
}
