// What a screen last said it did, and taking that back.
import { useState } from 'react';
import type { Id } from '../../records/index.ts';
import { type Ground, useGround } from './use-ground.ts';
import { objectionOf } from './use-records.ts';
import { words } from './words.ts';

export interface Said {
  readonly text: string;
  /** The entries that can be taken back, together. */
  readonly undo?: Id | readonly Id[];
  readonly isTakenBack?: boolean;
}

export interface SaidState {
  readonly said: Said | undefined;
  readonly say: (said: Said | undefined) => void;
  /** Takes entries back, or the taking back of some, and says so; that can be taken back in turn. */
  readonly undo: (entries: Id | readonly Id[], wasTakenBack?: boolean) => Promise<void>;
}

export function useSaid(): SaidState {
  const { append } = useGround();
  const [said, say] = useState<Said>();
  const undo = async (entries: Id | readonly Id[], wasTakenBack = false) =>
    say(await takenBack(append, [entries].flat(), wasTakenBack));
  return { said, say, undo };
}

async function takenBack(
  append: Ground['append'],
  entries: readonly Id[],
  wasTakenBack: boolean,
): Promise<Said> {
  const undone = await append(entries.map((entry) => ({ kind: 'undone', entry })));
  if (!undone.ok) return { text: await objectionOf(undone) };
  return {
    text: wasTakenBack ? words.broughtBack : words.takenBack,
    undo: undone.value.map(({ id }) => id),
    isTakenBack: !wasTakenBack,
  };
}
