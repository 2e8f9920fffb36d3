// The stickers and pens that a house has: each colour by its name and how it prints, one tap each.
import { useId } from 'react';
import { ToggleButton } from 'react-aria-components/ToggleButton';
import { ToggleButtonGroup } from 'react-aria-components/ToggleButtonGroup';
import { withColours } from '../recipe/entries.ts';
import { words } from '../words.ts';
import type { ControlsProps } from './shell-controls.tsx';

/** With none chosen a sheet may have all colours. */
export function ColourChips({ catalogue, entries, edit }: ControlsProps) {
  const id = useId();
  const names = catalogue.colours.map(({ name }) => name);
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
        selectedKeys={entries.colours ?? []}
        onSelectionChange={(keys) =>
          edit(
            withColours(
              entries,
              names.filter((name) => keys.has(name)),
            ),
          )
        }
      >
        {catalogue.colours.map(({ name, hex }) => (
          <ToggleButton key={name} id={name} className="colour-chip">
            <span className="swatch" style={{ background: hex }} />
            {name}
          </ToggleButton>
        ))}
      </ToggleButtonGroup>
      <p id={`${id}-help`} className="help">
        {words.onlyColours.help(entries.colours?.length ?? 0)}
      </p>
    </li>
  );
}
