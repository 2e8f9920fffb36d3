// For a group: whose sheets they are, and how they lie; folded away until wanted.
import { memo } from 'react';
import { Chips } from '../children/chips.tsx';
import { TextField } from '../children/text-field.tsx';
import { Fold } from '../fold.tsx';
import type { Group } from '../making/protocol.ts';
import { words } from '../words.ts';

export interface GroupNamesProps {
  readonly group: Group;
  /** Whether it has no part in the sheet on the table, since that was opened by its code. */
  readonly isAside: boolean;
  readonly objection: string | undefined;
  readonly onChange: (group: Group) => void;
}

/** Drawn anew only when it is to show something else. */
export const GroupNames = memo(({ group, isAside, objection = '', onChange }: GroupNamesProps) => {
  return (
    <Fold
      className="more"
      defaultExpanded={group.names.trim() !== ''}
      title={words.group}
      level={2}
    >
      <div className="group-fields">
        {isAside ? <p className="help">{words.groupAside}</p> : null}
        <TextField
          label={words.groupNames}
          help={words.groupHelp}
          value={group.names}
          objection={objection}
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
