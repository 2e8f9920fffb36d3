// Where on the page a fault lies: solvers say what is wrong, and the task as it was made says what did it.
import type { Activity, Task } from '../activities/index.ts';
import type { Told } from '../base/index.ts';
import { type Figure, sameFigure } from '../figures/index.ts';
import { findingsOf } from './findings.ts';
import { haveSamePlaces, type Place, placesIn, sameFacts, valueAt, withValue } from './places.ts';

/** What is asked of a fault's place. */
export interface FaultAsked {
  readonly activity: Activity;
  readonly printed: unknown;
  /** The task as it was made. */
  readonly before: Task;
  /** Places of the last change, for what nothing else explains. */
  readonly touched: readonly number[];
}

/**
 * Numbers of the places that do it: those changed ones that each alone, put back, would end the fault; else all changed
 * ones, if these together would; else where the figures stand that the fault names; else those of the last change.
 */
export function placesOfFault(asked: FaultAsked, fault: Told): readonly number[] {
  const done = doersOf(asked, (facts) =>
    findingsOf(asked.activity, facts).faults.every((other) => !sameFacts(other, fault)),
  );
  if (done.length > 0) return done;
  const named = placesNamed(asked.printed, fault);
  return named.length > 0 ? named : asked.touched;
}

/** As `placesOfFault`, for a task to which no answer is found. */
export function placesOfNoAnswer(asked: FaultAsked): readonly number[] {
  const done = doersOf(asked, (facts) => findingsOf(asked.activity, facts).answers.length > 0);
  return done.length > 0 ? done : asked.touched;
}

function doersOf(
  { printed, before }: FaultAsked,
  isMended: (facts: unknown) => boolean,
): readonly number[] {
  const changed = changedPlaces(printed, before);
  const asItWas = (facts: unknown, { path }: Place) =>
    withValue(facts, path, valueAt(before.printed, path));
  const alone = changed.filter(({ place }) => isMended(asItWas(printed, place)));
  if (alone.length > 0) return alone.map(({ number }) => number);
  const isByAll =
    changed.length > 1 &&
    isMended(changed.reduce((facts, { place }) => asItWas(facts, place), printed));
  return isByAll ? changed.map(({ number }) => number) : [];
}

/** Places that show something else than they did; none where things were added or taken away, so that places moved. */
function changedPlaces(printed: unknown, before: Task) {
  const [is, was] = [placesIn(printed), placesIn(before.printed)];
  if (!haveSamePlaces(is, was)) return [];
  return is
    .map((place, number) => ({ place, number }))
    .filter(({ place, number }) => !sameFacts(place.figure, was[number]?.figure));
}

function placesNamed(printed: unknown, { values = {} }: Told): readonly number[] {
  const named = Object.values(values).flatMap((value) =>
    typeof value === 'object' && 'figure' in value ? [value.figure as Figure] : [],
  );
  return placesIn(printed).flatMap(({ figure }, number) =>
    figure && named.some((other) => sameFigure(other, figure)) ? [number] : [],
  );
}
