// The stickers and pens that a house has: each colour by its name and how it prints, one tap each.
import { memo, useId } from 'react';
import { ToggleButton } from 'react-aria-components/ToggleButton';
import { ToggleButtonGroup } from 'react-aria-components/ToggleButtonGroup';
import type { ColourCard } from '../making/protocol.ts';
import { withColours } from '../recipe/entries.ts';
import type { Edit } from '../recipe/use-recipe.ts';
import { shared } from '../speaking/shared.ts';
import { words } from '../words.ts';

const NONE: readonly string[] = [];

export interface ColourChipsProps {
  readonly colours: readonly ColourCard[];
  /** By name; with none chosen a sheet may have all colours. */
  readonly chosen: readonly string[] | undefined;
  readonly edit: Edit;
}

/** Drawn anew only when they are to show something else. */
export const ColourChips = memo(({ colours, chosen = NONE, edit }: ColourChipsProps) => {
  const id = useId();
  const names = colours.map(({ name }) => name);
  return (
    <li>
      <span id={`${id}-label`} className="asked">
        {words.onlyColours.label}
      </span>
      <ToggleButtonGroup
        className="colour-chips"
        aria-labelledby={`${id}-label`}
        aria-describedby={`${id}-help`}
        selectionMode="multiple"
        selectedKeys={chosen}
        onSelectionChange={(keys) =>
          edit((now) =>
            withColours(
              now,
              names.filter((name) => keys.has(name)),
            ),
          )
        }
      >
        {colours.map(({ name, hex }) => (
          <ToggleButton key={name} id={name} className="colour-chip">
            <span className="swatch" style={{ background: hex }} />
            {shared.colour(name)}
          </ToggleButton>
        ))}
      </ToggleButtonGroup>
      <p id={`${id}-help`} className="help">
        {words.onlyColours.help(chosen.length)}
      </p>
    </li>
  );
});
