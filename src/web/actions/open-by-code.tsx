// A small form that makes the sheet of a typed code again; a code that cannot be read stays to be mended.
import { memo, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { Dialog, DialogTrigger } from 'react-aria-components/Dialog';
import { FieldError } from 'react-aria-components/FieldError';
import { Form } from 'react-aria-components/Form';
import { Heading } from 'react-aria-components/Heading';
import { Input } from 'react-aria-components/Input';
import { Label } from 'react-aria-components/Label';
import { Popover } from 'react-aria-components/Popover';
import { Text } from 'react-aria-components/Text';
import { TextField } from 'react-aria-components/TextField';
import type { Maker } from '../making/maker.ts';
import { readText, useKept } from '../offline/kept.ts';
import type { Entries } from '../recipe/entries.ts';
import { words } from '../words.ts';

export interface OpenByCodeProps {
  readonly maker: Maker;
  readonly onOpen: (entries: Entries) => void;
}

/** Drawn anew only when it is to show something else. */
export const OpenByCode = memo(({ maker, onOpen }: OpenByCodeProps) => {
  const [code, setCode] = useKept('code to open', readText);
  const [objection, setObjection] = useState<string>();
  const open = async (close: () => void) => {
    const reply = await maker.ask('open', { code });
    if (!reply.ok) {
      setObjection(reply.objections.map(({ sentence }) => sentence).join(' '));
      return;
    }
    setCode('');
    setObjection(undefined);
    close();
    onOpen(reply.value);
  };
  return (
    <DialogTrigger>
      <Button className="quiet">{words.openByCode}</Button>
      <Popover className="drawer" placement="top start">
        <Dialog className="code-form">
          {({ close }) => (
            <Form
              validationBehavior="aria"
              onSubmit={(event) => {
                event.preventDefault();
                void open(close);
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
                onChange={setCode}
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
                <Button className="quiet" onPress={close}>
                  {words.cancel}
                </Button>
              </div>
            </Form>
          )}
        </Dialog>
      </Popover>
    </DialogTrigger>
  );
});
