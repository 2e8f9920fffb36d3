// What the step asks for gives way to what a person set, and never the other way round.
import { expect, test } from 'vitest';
import { ACTIVITY_IDS, activityOf, type Parameter, type Value } from '../../activities/index.ts';
import { readAddress, writeAddress } from '../recipe/address.ts';
import { type Entries, FIRST_ENTRIES } from '../recipe/entries.ts';
import { fitValues } from './fit-values.ts';

/** Every value of a choice or yes-no, and the ends of a range. */
function valuesOf(spec: Parameter): readonly Value[] {
  switch (spec.kind) {
    case 'choice':
      return spec.values;
    case 'yes-no':
      return [true, false];
    case 'whole':
      return [spec.min, spec.max];
  }
}

function requests(): readonly Entries[] {
  return ACTIVITY_IDS.flatMap((activity) =>
    activityOf(activity).ladder.flatMap((_, index) =>
      Object.entries(activityOf(activity).parameters).flatMap(([name, spec]) =>
        valuesOf(spec).map((value) => ({
          ...FIRST_ENTRIES,
          seed: 1,
          activity,
          step: index + 1,
          changes: { [name]: value },
        })),
      ),
    ),
  );
}

test('what was set is kept as it is', () => {
  for (const entries of requests()) {
    expect(fitValues(entries).changes).toMatchObject(entries.changes);
  }
});

test('a choice that is written in digits is the same when it comes back from the address', () => {
  const inDigits = requests().filter(({ changes }) => /^\d+$/.test(String(Object.values(changes))));
  expect(inDigits.length).toBeGreaterThan(100);
  for (const entries of inDigits) {
    const back = readAddress(`#${writeAddress(entries)}`, 1);
    expect(fitValues(back).changes).toEqual(fitValues(entries).changes);
  }
});

test('any content of any activity can be had at any step', () => {
  const refused = requests()
    .filter(({ changes }) => 'content' in changes)
    .filter((entries) => {
      const { changes } = fitValues(entries);
      const activity = ACTIVITY_IDS.find((id) => id === entries.activity);
      return !activity || !activityOf(activity).read(entries.step, changes, { print: 'colour' }).ok;
    })
    .map(({ activity, step, changes }) => `${activity} ${step} ${JSON.stringify(changes)}`);
  expect(refused).toEqual([]);
});

test('nothing gives way where nothing must', () => {
  for (const activity of ACTIVITY_IDS) {
    expect(fitValues({ ...FIRST_ENTRIES, seed: 1, activity, changes: {} }).gaveWay).toEqual([]);
  }
});

test('what cannot be mended is left as it was entered', () => {
  const changes = { boxes: 99 };
  expect(fitValues({ ...FIRST_ENTRIES, seed: 1, changes })).toEqual({ changes, gaveWay: [] });
});
