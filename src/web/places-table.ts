// The screens of the places: Make at once, each other fetched with what it needs when it is first gone to.
import { type ComponentType, lazy } from 'react';
import { MakeScreen } from './make-screen.tsx';
import { PLACE_NAMES, type PlaceName } from './place-names.ts';
import type { ScreenProps } from './screen-props.ts';

/** A place without a screen is not there, and nothing leads to it. */
export const SCREENS: Readonly<Partial<Record<PlaceName, ComponentType<ScreenProps>>>> = {
  today: lazy(() => import('./today/today-screen.tsx')),
  make: MakeScreen,
  week: lazy(() => import('./week/week-screen.tsx')),
  record: lazy(() => import('./record/record-screen.tsx')),
  growth: lazy(() => import('./growth/growth-screen.tsx')),
  supplies: lazy(() => import('./supplies/supplies-screen.tsx')),
};

export const PLACES_THERE: readonly PlaceName[] = PLACE_NAMES.filter((place) => place in SCREENS);
