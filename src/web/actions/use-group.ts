// The group that packs are made for, remembered in this browser; names are no part of a recipe or its address.
import { useCallback, useEffect, useState } from 'react';
import { recall, remember } from '../children/remembered.ts';
import type { Group } from '../making/protocol.ts';
import { useKept } from '../offline/kept.ts';
import type { Entries } from '../recipe/entries.ts';

/** In ms: longer than from one letter to the next. */
const RESTED_MS = 400;

export interface GroupState {
  /** As it is being written; without names there is none. */
  readonly written: Group;
  readonly write: (group: Group) => void;
  /** Absent: the pack is for nobody in particular. */
  readonly group?: Group | undefined;
  /** The same as it was when the writing last rested: no page is made for a name that is half written. */
  readonly rested?: Group | undefined;
  /** Whether a sheet that was opened by its code lies on the table, which is for nobody in particular. */
  readonly isAside: boolean;
}

export function useGroup({ first }: Entries): GroupState {
  const [written, setWritten] = useKept('group', readGroup);
  const [rested, setRested] = useState(written);
  useEffect(() => {
    const wait = setTimeout(() => setRested(written), RESTED_MS);
    return () => clearTimeout(wait);
  }, [written]);
  const write = useCallback(
    (group: Group) => {
      setWritten(group);
      remember('group', group.names.trim() === '' ? undefined : group.names);
    },
    [setWritten],
  );
  const isAside = first !== undefined && hasNames(written);
  const inForce = (group: Group) => (hasNames(group) && !isAside ? group : undefined);
  return { written, write, group: inForce(written), rested: inForce(rested), isAside };
}

function hasNames({ names }: Group): boolean {
  return names.trim() !== '';
}

/** Names are remembered from visit to visit; how the sheets lie is not. */
function readGroup(left: unknown): Group {
  const isByActivity = left instanceof Object && 'sortedBy' in left && left.sortedBy === 'activity';
  return { names: recall('group') ?? '', sortedBy: isByActivity ? 'activity' : 'child' };
}
