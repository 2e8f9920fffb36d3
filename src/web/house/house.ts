// What a screen knows of the house.
import type { Stock } from '../../records/index.ts';

export interface House {
  /** Whether the records have been looked through. */
  readonly isKnown: boolean;
  /** What is left of what was counted; absent: nothing was counted, or it is not known yet. */
  readonly stock?: Stock;
}

export const UNKNOWN_HOUSE: House = { isKnown: false };
export const UNCOUNTED_HOUSE: House = { isKnown: true };
