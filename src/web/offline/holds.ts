// What must not be cut off: as long as something is being made or written, a change-over waits.

let held = 0;
const waiting = new Set<() => void>();

/** Holds change-overs until what it answers is called. */
export function holdChangeOver(): () => void {
  held += 1;
  let isHolding = true;
  return () => {
    if (!isHolding) return;
    isHolding = false;
    held -= 1;
    if (held > 0) return;
    for (const go of waiting) go();
    waiting.clear();
  };
}

/** Holds change-overs until the work is done. */
export async function holdWhile<T>(work: Promise<T>): Promise<T> {
  const release = holdChangeOver();
  try {
    return await work;
  } finally {
    release();
  }
}

/** Answers once nothing holds, and the screen has taken in what came of it. */
export async function nothingHolds(): Promise<void> {
  do {
    await released();
    await new Promise((resolve) => setTimeout(resolve));
  } while (held > 0);
}

function released(): Promise<void> {
  if (held === 0) return Promise.resolve();
  return new Promise((resolve) => {
    waiting.add(resolve);
  });
}
