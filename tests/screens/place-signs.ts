// What shows that a place of the app is there.
import type { PlaceName } from '../../src/web/place-names.ts';

/** What shows that a screen is there with all that it is told by workers. */
export const SIGNS: Readonly<Record<PlaceName, string>> = {
  today: '.today-day[aria-busy="false"] .day-things',
  make: '.sheet svg',
  week: '.week-bar',
  record: '.results .entry-sheet',
  growth: '.course-plot',
  supplies: '.stickers',
};
