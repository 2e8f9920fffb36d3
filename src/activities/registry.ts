// The one list of activities: everything that needs to know them reads this table.
import type { Activity } from './activity.ts';
import { byKey } from './by-key/index.ts';
import { continueRow } from './continue-row/index.ts';
import { copyPattern } from './copy-pattern/index.ts';
import { crossingTable } from './crossing-table/index.ts';
import { findTheSame } from './find-the-same/index.ts';
import { followTheLine } from './follow-the-line/index.ts';
import { inEveryBox } from './in-every-box/index.ts';
import { lookAndRemember } from './look-and-remember/index.ts';
import { mirrorHalf } from './mirror-half/index.ts';
import { missingPart } from './missing-part/index.ts';
import { oddOneOut } from './odd-one-out/index.ts';
import { oneOfEach } from './one-of-each/index.ts';
import { sameOrDifferent } from './same-or-different/index.ts';
import { shadows } from './shadows/index.ts';
import { sizeOrder } from './size-order/index.ts';
import { tangle } from './tangle/index.ts';
import { turnedShapes } from './turned-shapes/index.ts';
import { whatChanged } from './what-changed/index.ts';

export const ACTIVITIES = {
  'in-every-box': inEveryBox,
  'by-key': byKey,
  'copy-pattern': copyPattern,
  'continue-row': continueRow,
  'odd-one-out': oddOneOut,
  'find-the-same': findTheSame,
  'same-or-different': sameOrDifferent,
  'mirror-half': mirrorHalf,
  'turned-shapes': turnedShapes,
  'what-changed': whatChanged,
  'size-order': sizeOrder,
  'look-and-remember': lookAndRemember,
  'follow-the-line': followTheLine,
  'one-of-each': oneOfEach,
  'crossing-table': crossingTable,
  shadows,
  'missing-part': missingPart,
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
