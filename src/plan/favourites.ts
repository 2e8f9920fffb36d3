// Old favourites: what a child does well already, given now and then for confidence.
import type { ActivityId } from '../activities/index.ts';
import { type Setting, type Suggestion, sheetOf, successAt, type Wanted } from './course.ts';
import { dayNumber } from './days.ts';
import { rungFor } from './rung-choice.ts';
import type { GivenSheet } from './standing.ts';

/** So often given, and so well done the last times, an activity is a favourite: common practice, no source. */
const LEAST_TIMES = 2;
const LEAST_RIGHT = 0.8;
/** Success that is nearly sure: common practice, no source. */
const FAVOURITE_SUCCESS = 0.92;

/** An easy sheet of the favourite that has rested longest; `undefined` where there is none yet. */
export function favouriteSheet(
  setting: Setting,
  { day, planned, without }: Wanted,
): Suggestion | undefined {
  const recent = new Set(planned.map(({ activity }) => activity));
  const favourites = favouritesOf(setting.standing.given).filter(
    ({ facts }) => !recent.has(facts.activity) && !without?.has(facts.activity),
  );
  for (const { facts: known, result } of favourites) {
    const rungs = rungFor(setting, known.activity, known.content, FAVOURITE_SUCCESS);
    const rung = rungs[0];
    const facts = rung && sheetOf(setting, rung);
    if (!facts) continue;
    const success = successAt(setting.standing, facts);
    const restedDays = dayNumber(day) - dayNumber(result.day);
    return { facts, why: 'favourite', success, restedDays };
  }
  return undefined;
}

/** The last sheet of each favourite, the one that was given longest ago first. */
function favouritesOf(given: readonly GivenSheet[]): readonly GivenSheet[] {
  const byActivity = new Map<ActivityId, readonly GivenSheet[]>();
  for (const sheet of given) {
    const { activity } = sheet.facts;
    byActivity.set(activity, [...(byActivity.get(activity) ?? []), sheet]);
  }
  return [...byActivity.values()]
    .map((sheets) => sheets.slice(-LEAST_TIMES))
    .filter(
      (sheets) =>
        sheets.length === LEAST_TIMES &&
        sheets.every(({ rightAlone }) => rightAlone >= LEAST_RIGHT),
    )
    .flatMap((sheets) => sheets.slice(-1))
    .sort(
      (one, other) =>
        Number(one.result.day > other.result.day) - Number(one.result.day < other.result.day),
    );
}
