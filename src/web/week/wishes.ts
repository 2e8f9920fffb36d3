// What is wished of weeks beside what is wished of all plans: their days, and skills to come more often; remembered.
import { useState } from 'react';
import type { Skill } from '../../activities/index.ts';
import { type Remembered, recall, remember } from '../children/remembered.ts';
import { words as planning } from '../planning/words.ts';
import { USUAL_WEEKDAYS, WEEKDAYS, type Weekday } from './week-days.ts';

export const SKILLS = Object.keys(planning.skills) as readonly Skill[];

export interface WeekWishes {
  readonly weekdays: readonly Weekday[];
  readonly favoured: readonly Skill[];
}

/** The wishes of this browser, and a way to change them for all visits to come. */
export function useWeekWishes(): readonly [WeekWishes, (wishes: WeekWishes) => void] {
  const [wishes, setWishes] = useState<WeekWishes>(() => ({
    weekdays: recallNames('week.days', WEEKDAYS) ?? USUAL_WEEKDAYS,
    favoured: recallNames('week.favoured', SKILLS) ?? [],
  }));
  const change = (next: WeekWishes) => {
    setWishes(next);
    remember('week.days', next.weekdays.join(' '));
    remember('week.favoured', next.favoured.length === 0 ? undefined : next.favoured.join(' '));
  };
  return [wishes, change];
}

/** Those of the names that are remembered; absent where none is. */
function recallNames<T extends string>(
  what: Remembered,
  names: readonly T[],
): readonly T[] | undefined {
  const remembered = (recall(what) ?? '').split(' ');
  const known = names.filter((name) => remembered.includes(name));
  return known.length === 0 ? undefined : known;
}
