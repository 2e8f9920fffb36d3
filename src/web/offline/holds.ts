// What must not be cut off: as long as something is being written, a change-over waits.

const holds = new Set<symbol>();
const waiting = new Set<() => void>();

/** Holds change-overs until what it answers is called. */
export function holdChangeOver(): () => void {
  const hold = Symbol('hold');
  holds.add(hold);
  return () => {
    holds.delete(hold);
    if (holds.size > 0) return;
    for (const go of waiting) go();
    waiting.clear();
  };
}

/** Answers as soon as nothing holds. */
export function nothingHolds(): Promise<void> {
  if (holds.size === 0) return Promise.resolve();
  return new Promise((resolve) => {
    waiting.add(resolve);
  });
}
