// The list that opens from a choice; fetched apart.
import type { RefObject } from 'react';
import { ListBox, ListBoxItem } from 'react-aria-components/ListBox';
import { Popover } from 'react-aria-components/Popover';
import { Select } from 'react-aria-components/Select';
import type { Choice } from './choice.ts';

export interface ChoiceListProps {
  /** What it opens from, which is its name as well. */
  readonly trigger: RefObject<HTMLElement | null>;
  readonly labelledBy: string;
  readonly value: string;
  readonly choices: readonly Choice[];
  readonly isOpen: boolean;
  readonly onOpenChange: (isOpen: boolean) => void;
  readonly onChoose: (value: string) => void;
}

export function ChoiceList(props: ChoiceListProps) {
  const { trigger, labelledBy, value, choices, isOpen, onOpenChange, onChoose } = props;
  return (
    <Select
      hidden
      aria-labelledby={labelledBy}
      value={value}
      isOpen={isOpen}
      onOpenChange={onOpenChange}
      onChange={(chosen) => {
        if (chosen !== null) onChoose(String(chosen));
      }}
    >
      <Popover className="drawer" placement="bottom start" triggerRef={trigger}>
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
