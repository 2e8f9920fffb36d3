// The group that packs are made for, remembered in this browser; names are no part of a recipe or its address.
import { useCallback } from 'react';
import { recall, remember } from '../children/remembered.ts';
import type { Group } from '../making/protocol.ts';
import { useKept } from '../offline/kept.ts';

export interface GroupState {
  /** As it is being written; without names there is none. */
  readonly written: Group;
  readonly write: (group: Group) => void;
  /** Absent: the pack is for nobody in particular. */
  readonly group?: Group;
}

export function useGroup(): GroupState {
  const [written, setWritten] = useKept('group', readGroup);
  const write = useCallback(
    (group: Group) => {
      setWritten(group);
      remember('group', group.names.trim() === '' ? undefined : group.names);
    },
    [setWritten],
  );
  return { written, write, ...(written.names.trim() === '' ? {} : { group: written }) };
}

/** Names are remembered from visit to visit; how the sheets lie is not. */
function readGroup(left: unknown): Group {
  const isByActivity = left instanceof Object && 'sortedBy' in left && left.sortedBy === 'activity';
  return { names: recall('group') ?? '', sortedBy: isByActivity ? 'activity' : 'child' };
}
