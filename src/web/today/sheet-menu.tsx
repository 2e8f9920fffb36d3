// What can be changed about one sheet of the day, behind one quiet button.
import { Button } from 'react-aria-components/Button';
import { Menu, MenuItem, MenuTrigger } from 'react-aria-components/Menu';
import { Popover } from 'react-aria-components/Popover';
import { SHEET_CHANGES, type SheetChange, words } from './words.ts';

export interface SheetMenuProps {
  readonly name: string;
  /** Whether this sheet is being changed. */
  readonly isBusy: boolean;
  /** What cannot be done now. */
  readonly without: readonly SheetChange[];
  readonly onChange: (how: SheetChange) => void;
}

export function SheetMenu({ name, isBusy, without, onChange }: SheetMenuProps) {
  return (
    <MenuTrigger>
      <Button className="quiet" aria-label={words.of(words.change, name)}>
        {isBusy ? words.changing : words.change}
      </Button>
      <Popover className="drawer" placement="bottom start">
        <Menu
          className="list sheet-menu"
          items={SHEET_CHANGES.map((id) => ({ id }))}
          disabledKeys={without}
          onAction={(chosen) => {
            const how = SHEET_CHANGES.find((each) => each === chosen);
            if (how) onChange(how);
          }}
        >
          {({ id }) => (
            <MenuItem id={id} className="item">
              {words.changes[id]}
            </MenuItem>
          )}
        </Menu>
      </Popover>
    </MenuTrigger>
  );
}
