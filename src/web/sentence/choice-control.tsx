// A choice inside a sentence: reads as bold words, opens as a list, which is fetched apart.
import { useId, useRef, useState } from 'react';
import { Button, type ButtonProps } from 'react-aria-components/Button';
import { later } from '../later.ts';
import type { Choice } from './choice.ts';
import { choiceByKey } from './choice-by-key.ts';

const list = later(() => import('./choice-list.tsx'));

export interface ChoiceControlProps {
  readonly label: string;
  readonly value: string;
  readonly choices: readonly Choice[];
  readonly objection: string | undefined;
  readonly onChange: (value: string) => void;
}

export function ChoiceControl({ label, value, choices, objection, onChange }: ChoiceControlProps) {
  const id = useId();
  const trigger = useRef<HTMLButtonElement>(null);
  // The list is made ready as soon as it is likely to be opened.
  const [isNear, setNear] = useState(false);
  const [isOpen, setOpen] = useState(false);
  const there = list.use(isNear || isOpen);
  const choose = (next: string) => {
    if (next !== value) onChange(next);
  };
  const open = () => {
    // Where the focus returns to.
    trigger.current?.focus({ preventScroll: true });
    setOpen(true);
  };
  const near = () => setNear(true);
  const [labelledBy, describedBy] = [`${id}-value ${id}`, `${id}-objection`];
  return (
    <div className="control">
      <Button
        ref={trigger}
        id={id}
        className="blank"
        aria-label={label}
        aria-labelledby={labelledBy}
        aria-haspopup="listbox"
        aria-expanded={isOpen}
        {...(objection === undefined ? {} : { 'aria-describedby': describedBy })}
        onHoverStart={near}
        onFocus={near}
        {...pressesThatOpen(open)}
        onKeyDown={(event) => {
          const next = hasModifier(event) ? undefined : choiceByKey(event.key, value, choices);
          if (next !== undefined) choose(next);
          else if (event.key === 'ArrowDown' || event.key === 'ArrowUp') open();
          else return event.continuePropagation();
          event.preventDefault();
        }}
      >
        <span id={`${id}-value`}>
          {choices.find((choice) => choice.value === value)?.name ?? inShort(value)}
        </span>
      </Button>
      {objection === undefined ? null : (
        <>
          <wbr />
          <span id={describedBy} className="objection">
            {objection}
          </span>
        </>
      )}
      {there && (isNear || isOpen) ? (
        <there.ChoiceList
          trigger={trigger}
          labelledBy={labelledBy}
          value={value}
          choices={choices}
          isOpen={isOpen}
          onOpenChange={setOpen}
          onChoose={choose}
        />
      ) : null}
    </div>
  );
}

/** What is no choice comes from a link that anybody may have written, of any length, or none. */
function inShort(value: string): string {
  if (value === '') return '…';
  return value.length > MOST_SHOWN ? `${value.slice(0, MOST_SHOWN)}…` : value;
}

const MOST_SHOWN = 20;

/** A mouse opens as it goes down, so that one movement leads to the choice; a finger may have begun to scroll. */
function pressesThatOpen(open: () => void): Pick<ButtonProps, 'onPressStart' | 'onPress'> {
  return {
    onPressStart: ({ pointerType }) => {
      if (pointerType !== 'touch' && pointerType !== 'keyboard') open();
    },
    onPress: ({ pointerType }) => {
      if (pointerType === 'touch' || pointerType === 'keyboard') open();
    },
  };
}

interface Modified {
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
}

function hasModifier({ ctrlKey, metaKey, altKey }: Modified): boolean {
  return ctrlKey || metaKey || altKey;
}
