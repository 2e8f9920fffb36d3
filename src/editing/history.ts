// Undo and redo without limit: states as they were, nothing replayed.

export interface History<S> {
  readonly past: readonly S[];
  readonly now: S;
  /** Undone, the last undone first. */
  readonly future: readonly S[];
}

export function historyOf<S>(now: S): History<S> {
  return { past: [], now, future: [] };
}

/** A new state; what was undone is given up. */
export function changed<S>({ past, now }: History<S>, next: S): History<S> {
  return { past: [...past, now], now: next, future: [] };
}

export function undone<S>(history: History<S>): History<S> {
  const { past, now, future } = history;
  if (past.length === 0) return history;
  return { past: past.slice(0, -1), now: past[past.length - 1] as S, future: [now, ...future] };
}

export function redone<S>(history: History<S>): History<S> {
  const { past, now, future } = history;
  if (future.length === 0) return history;
  return { past: [...past, now], now: future[0] as S, future: future.slice(1) };
}
