// Whether the pack is made of what the house has alone; where nothing was counted yet, how to come to that.
import { useId } from 'react';
import { Switch } from 'react-aria-components/Switch';
import type { House } from '../house/house.ts';
import { hashOf } from '../place-names.ts';
import { withAtHand } from '../recipe/entries.ts';
import { words } from '../words.ts';
import type { ControlsProps } from './shell-controls.tsx';

export interface AtHandSwitchProps extends Pick<ControlsProps, 'entries' | 'edit'> {
  readonly house: House;
}

export function AtHandSwitch({ entries, edit, house }: AtHandSwitchProps) {
  const help = useId();
  const isOn = entries.atHand === true;
  const isCounted = house.stock !== undefined;
  const { label } = words.atHand;
  return (
    <li>
      <div className="asked">
        <span>{label}</span>{' '}
        <span className="control">
          <Switch
            aria-label={label}
            aria-describedby={help}
            className="blank switch"
            isSelected={isOn}
            isDisabled={!isCounted && !isOn}
            onChange={(next) => edit(withAtHand(entries, next))}
          >
            {isOn ? words.yes : words.no}
          </Switch>
        </span>
      </div>
      <p id={help} className="help">
        {isCounted || !house.isKnown ? (
          words.atHand.help
        ) : (
          <>
            {words.atHand.never} <a href={hashOf('supplies')}>{words.atHand.link}</a>
            {words.atHand.end}
          </>
        )}
      </p>
    </li>
  );
}
