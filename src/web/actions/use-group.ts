// The group that packs are made for, remembered in this browser; names are no part of a recipe or its address.
import { useState } from 'react';
import { recall, remember } from '../children/remembered.ts';
import type { Group } from '../making/protocol.ts';

export interface GroupState {
  /** As it is being written; without names there is none. */
  readonly written: Group;
  readonly write: (group: Group) => void;
  /** Absent: the pack is for nobody in particular. */
  readonly group?: Group;
}

export function useGroup(): GroupState {
  const [written, setWritten] = useState<Group>(() => ({
    names: recall('group') ?? '',
    sortedBy: 'child',
  }));
  const write = (group: Group) => {
    setWritten(group);
    remember('group', group.names.trim() === '' ? undefined : group.names);
  };
  return { written, write, ...(written.names.trim() === '' ? {} : { group: written }) };
}
