// Older stored forms become today's, one version at a time; the same steps serve backup files and the database.

/** Turns one entry of a version into one of the next; what comes out of the last is checked, so it may meet anything. */
export type Step = (entry: unknown) => unknown;

/**
 * The first step turns version 1 into version 2, and so on. Whoever changes the stored form adds a
 * step here, and a test with a file that the version before had written.
 */
export const STEPS: readonly Step[] = [withPlansAndStock, withPictures, withPapers];

/** Version 2 adds plans and the stock; all that version 1 has is as it was. */
function withPlansAndStock(entry: unknown): unknown {
  return entry;
}

/** Version 3 adds pictures of the family's own; all that version 2 has is as it was. */
function withPictures(entry: unknown): unknown {
  return entry;
}

/** Version 4 adds papers to the stock; all that version 3 has is as it was. */
function withPapers(entry: unknown): unknown {
  return entry;
}

/** The version that entries have after all steps. */
export function versionAfter(steps: readonly Step[]): number {
  return steps.length + 1;
}

/** An entry of version `from` (1 to today's) in today's form. */
export function migrated(entry: unknown, from: number, steps: readonly Step[]): unknown {
  return steps.slice(from - 1).reduce((older, step) => step(older), entry);
}
