// For a group: whose sheets they are, and how they lie; folded away until wanted.
import { memo } from 'react';
import { Chips } from '../children/chips.tsx';
import { TextField } from '../children/text-field.tsx';
import { Fold } from '../fold.tsx';
import type { Group } from '../making/protocol.ts';
import { words } from '../words.ts';

export interface GroupNamesProps {
  readonly group: Group;
  readonly onChange: (group: Group) => void;
}

/** Drawn anew only when it is to show something else. */
export const GroupNames = memo(({ group, onChange }: GroupNamesProps) => {
  return (
    <Fold
      className="more"
      defaultExpanded={group.names.trim() !== ''}
      title={words.group}
      level={2}
    >
      <div className="group-fields">
        <TextField
          label={words.groupNames}
          help={words.groupHelp}
          value={group.names}
          isLong
          onChange={(names) => onChange({ ...group, names })}
        />
        <Chips
          label={words.groupSorted}
          names={words.groupSortings}
          chosen={[group.sortedBy]}
          isNeeded
          onChange={([sortedBy]) => sortedBy && onChange({ ...group, sortedBy })}
        />
      </div>
    </Fold>
  );
});
