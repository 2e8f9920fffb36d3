// Tells every open tab, this one too, that entries have changed.

export interface Changes {
  readonly tell: () => void;
  /** Calls `listener` after each change, in whichever tab; the answer ends that. */
  readonly listen: (listener: () => void) => () => void;
  readonly close: () => void;
}

/** Changes of the database of that name. */
export function changesOf(name: string): Changes {
  const channel = new BroadcastChannel(name);
  const listeners = new Set<() => void>();
  const callAll = () => {
    for (const listener of listeners) listener();
  };
  channel.addEventListener('message', callAll);
  return {
    tell: () => {
      channel.postMessage('changed');
      callAll();
    },
    listen: (listener) => {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
    close: () => channel.close(),
  };
}
