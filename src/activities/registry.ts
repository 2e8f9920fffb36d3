// The one list of activities: everything that needs to know them reads this table.
import type { Activity } from './activity.ts';
import { byKey } from './by-key/index.ts';
import { continueRow } from './continue-row/index.ts';
import { copyPattern } from './copy-pattern/index.ts';
import { followTheLine } from './follow-the-line/index.ts';
import { inEveryBox } from './in-every-box/index.ts';
import { tangle } from './tangle/index.ts';

export const ACTIVITIES = {
  'in-every-box': inEveryBox,
  'by-key': byKey,
  'copy-pattern': copyPattern,
  'continue-row': continueRow,
  'follow-the-line': followTheLine,
  tangle,
} as const satisfies Readonly<Record<string, Activity>>;

export type ActivityId = keyof typeof ACTIVITIES;

export const ACTIVITY_IDS = Object.keys(ACTIVITIES) as readonly ActivityId[];

export function isActivityId(name: string): name is ActivityId {
  return Object.hasOwn(ACTIVITIES, name);
}

export function activityOf(id: ActivityId): Activity {
  return ACTIVITIES[id];
}
