// A choice inside a sentence: reads as bold words, opens as a list.
import { Button } from 'react-aria-components/Button';
import { FieldError } from 'react-aria-components/FieldError';
import { ListBox, ListBoxItem } from 'react-aria-components/ListBox';
import { Popover } from 'react-aria-components/Popover';
import { Select, SelectValue } from 'react-aria-components/Select';

export interface Choice {
  readonly value: string;
  readonly name: string;
  readonly note?: string;
}

export interface ChoiceControlProps {
  readonly label: string;
  readonly value: string;
  readonly choices: readonly Choice[];
  readonly objection: string | undefined;
  readonly onChange: (value: string) => void;
}

export function ChoiceControl({ label, value, choices, objection, onChange }: ChoiceControlProps) {
  return (
    <Select
      aria-label={label}
      className="control"
      value={value}
      placeholder={value}
      isInvalid={objection !== undefined}
      validationBehavior="aria"
      onChange={(chosen) => {
        if (chosen !== null && chosen !== value) onChange(String(chosen));
      }}
    >
      <Button className="blank">
        <SelectValue>
          {({ defaultChildren, selectedText }) => selectedText ?? defaultChildren}
        </SelectValue>
      </Button>
      <FieldError className="objection">{objection}</FieldError>
      <Popover className="drawer" placement="bottom start">
        <ListBox
          className="list"
          items={choices.map((choice) => ({ ...choice, id: choice.value }))}
        >
          {({ id, name, note }) => (
            <ListBoxItem id={id} textValue={name} className="item">
              <span className="item-name">{name}</span>
              {note === undefined ? null : <span className="item-note">{note}</span>}
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </Select>
  );
}
