// The screens of the places: Make at once, each other fetched with what it needs when it is first gone to.
import type { ComponentType } from 'react';
import { fetched } from './fetched.tsx';
import { MakeScreen } from './make-screen.tsx';
import { PLACE_NAMES, type PlaceName } from './place-names.ts';
import type { ScreenProps } from './screen-props.ts';

/** A place without a screen is not there, and nothing leads to it. */
export const SCREENS: Readonly<Partial<Record<PlaceName, ComponentType<ScreenProps>>>> = {
  today: fetched(() => import('./today/today-screen.tsx'), 'main'),
  make: MakeScreen,
  week: fetched(() => import('./week/week-screen.tsx'), 'main'),
  record: fetched(() => import('./record/record-screen.tsx'), 'main'),
  growth: fetched(() => import('./growth/growth-screen.tsx'), 'main'),
  supplies: fetched(() => import('./supplies/supplies-screen.tsx'), 'main'),
};

export const PLACES_THERE: readonly PlaceName[] = PLACE_NAMES.filter((place) => place in SCREENS);
