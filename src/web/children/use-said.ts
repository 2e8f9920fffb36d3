// What a screen last said it did, and taking that back.
import { useState } from 'react';
import type { Id } from '../../records/index.ts';
import { type Ground, useGround } from './use-ground.ts';
import { objectionOf } from './use-records.ts';
import { words } from './words.ts';

export interface Said {
  readonly text: string;
  /** The entry that can be taken back. */
  readonly undo?: Id;
  readonly isTakenBack?: boolean;
}

export interface SaidState {
  readonly said: Said | undefined;
  readonly say: (said: Said | undefined) => void;
  /** Takes an entry back, or the taking back of one, and says so; that can be taken back in turn. */
  readonly undo: (entry: Id, wasTakenBack?: boolean) => Promise<void>;
}

export function useSaid(): SaidState {
  const { append } = useGround();
  const [said, say] = useState<Said>();
  const undo = async (entry: Id, wasTakenBack = false) =>
    say(await takenBack(append, entry, wasTakenBack));
  return { said, say, undo };
}

async function takenBack(
  append: Ground['append'],
  entry: Id,
  wasTakenBack: boolean,
): Promise<Said> {
  const undone = await append([{ kind: 'undone', entry }]);
  if (!undone.ok) return { text: objectionOf(undone) };
  const [added] = undone.value;
  return {
    text: wasTakenBack ? words.broughtBack : words.takenBack,
    ...(added === undefined ? {} : { undo: added.id }),
    isTakenBack: !wasTakenBack,
  };
}
