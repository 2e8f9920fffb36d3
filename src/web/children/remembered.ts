// What this browser remembers from visit to visit beside the records; one that refuses storage just forgets.
import type { Entry, Shelf } from '../../records/index.ts';

const PREFIX = 'samewise.';

/** The shelf in view, the chosen child of each shelf, what is wished of plans and of weeks, the names of a group,
 * what the 50 mm line measures on the printer, whether sheets were printed before, the language that was chosen, and
 * whether own pictures were kept. */
export type Remembered =
  | 'shelf'
  | `child.${Shelf}`
  | 'wishes'
  | 'group'
  | 'measured'
  | 'printed'
  | 'language'
  | 'pictures'
  | `week.${'days' | 'favoured'}`;

export function recall(name: Remembered): string | undefined {
  try {
    return localStorage.getItem(PREFIX + name) ?? undefined;
  } catch {
    return undefined;
  }
}

/** Remembers the value; forgets it where there is none. */
export function remember(name: Remembered, value: string | undefined): void {
  try {
    if (value === undefined) localStorage.removeItem(PREFIX + name);
    else localStorage.setItem(PREFIX + name, value);
  } catch {}
}

/** The shelf that was last in view. */
export function recallShelf(): Shelf {
  return recall('shelf') === 'demo' ? 'demo' : 'real';
}

/** The same, of what the records hold now: without an invented group there is only the real one. */
export function shelfIn(entries: readonly Entry[]): Shelf {
  return entries.some(({ demo }) => demo === true) ? recallShelf() : 'real';
}

/** Whether there was a child in view at the end of the last visit. */
export function remembersChild(): boolean {
  return recall(`child.${recallShelf()}`) !== undefined;
}
