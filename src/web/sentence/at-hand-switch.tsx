// Whether the pack is made of what the house has alone; where nothing was counted yet, how to come to that.
import { memo, useId } from 'react';
import { Switch } from 'react-aria-components/Switch';
import type { House } from '../house/house.ts';
import { hashOf } from '../place-names.ts';
import { withAtHand } from '../recipe/entries.ts';
import type { Edit } from '../recipe/use-recipe.ts';
import { words } from '../words.ts';

export interface AtHandSwitchProps {
  readonly isOn: boolean;
  readonly edit: Edit;
  readonly house: House;
}

/** Drawn anew only when it is to show something else. */
export const AtHandSwitch = memo(({ isOn, edit, house }: AtHandSwitchProps) => {
  const help = useId();
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
            onChange={(next) => edit((now) => withAtHand(now, next))}
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
});
