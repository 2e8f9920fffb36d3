// A notch in the app moves what the sheet is like by about half a logit, and nothing that the person chose.
import { describe, expect, test } from 'vitest';
import { ACTIVITY_IDS, activityOf, isActivityId } from '../../activities/index.ts';
import { AIM_TOLERANCE, meanDifficulty, NOTCH_LOGITS, sampleSeeds } from '../../learner/index.ts';
import { valuesOf } from '../../sheets/index.ts';
import { type Entries, FIRST_ENTRIES } from '../recipe/entries.ts';
import { notched } from './notched.ts';

const STYLE = { print: 'colour' } as const;

function logitsOf({ activity, step, changes }: Entries): number {
  if (!isActivityId(activity)) throw new Error(`expected an activity, got ${activity}`);
  const values = valuesOf({ activity, step, values: changes, ...STYLE });
  if (!values.ok) throw new Error(JSON.stringify(values.refusals));
  return meanDifficulty(activityOf(activity), values.value, sampleSeeds(200), STYLE).logits;
}

describe.each(ACTIVITY_IDS)('%s', (activity) => {
  const step = Math.ceil(activityOf(activity).ladder.length / 2);
  const entries: Entries = { ...FIRST_ENTRIES, seed: 5, activity, step, tasks: 1 };

  test.each([
    ['harder', 1],
    ['easier', -1],
  ] as const)('a notch %s keeps seed and page and moves about half a logit', (direction, sign) => {
    const found = notched(entries, direction);
    if (!found.ok) throw new Error(JSON.stringify(found.refusals));
    const { step: _step, changes: _changes, tasks: _tasks, ...kept } = entries;
    expect(found.value).toMatchObject(kept);
    const moved = sign * (logitsOf(found.value) - logitsOf(entries));
    expect(Math.abs(moved - NOTCH_LOGITS)).toBeLessThanOrEqual(AIM_TOLERANCE);
  });
});

test('entries from which nothing can be made are refused', () => {
  expect(notched({ ...FIRST_ENTRIES, seed: 1, activity: 'smelling' }, 'harder').ok).toBe(false);
  expect(notched({ ...FIRST_ENTRIES, seed: 1, step: 99 }, 'harder').ok).toBe(false);
});
