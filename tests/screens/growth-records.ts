// Invented records for the tests of Growth: sheets of some weeks, and choices that fall on two colours again and again.
import type { Page } from 'playwright-core';
import { activityOf } from '../../src/activities/index.ts';
import type { Figure } from '../../src/figures/index.ts';
import { addDays, newPlanner } from '../../src/plan/index.ts';
import { afterDays, dayAfter, newKnown, START } from '../../src/plan/known-to-test.ts';
import type { Entry, TaskResult } from '../../src/records/index.ts';
import { DEFAULT_PAGE, makeSheet } from '../../src/sheets/index.ts';
import { childEntry, resultEntry } from '../record-entries.ts';
import type { App, OpenOptions } from './app.ts';
import { putEntries } from './kept-entries.ts';

const DAYS = 24;
const MIXED_SHEETS = 16;
/** Numbers of entries after all those of the days. */
const MIXED_FROM = 1000;

export const NICKNAME = 'Fern';
export const CHILD: Entry = childEntry(1, 1, { nickname: NICKNAME });
/** The day on which Growth is looked at. */
export const TODAY = dayAfter(DAYS);

/** What a child that comes to do more over seven weeks has on record, with one note. */
export const weeksOfRecords = madeOnce((): readonly Entry[] => {
  const { results } = afterDays(newPlanner(), newKnown(), DAYS, (day) => -1.75 + 0.12 * day);
  return results.map(({ code, day, tasks }, place) =>
    resultEntry(place + 2, 1, {
      code,
      day,
      tasks,
      ...(place === 0 ? { note: 'Laughed at the snail.' } : {}),
    }),
  );
});

/** Sheets on which red and orange are taken for each other wherever both can be chosen, and now and then two others. */
export const redForOrange = madeOnce((): readonly Entry[] =>
  Array.from({ length: MIXED_SHEETS }, (_, number) => mixedSheet(MIXED_FROM + number)),
);

/** Planning weeks takes seconds, and each time it gives the same. */
function madeOnce<T>(make: () => T): () => T {
  let made: T | undefined;
  return () => {
    made ??= make();
    return made;
  };
}

function mixedSheet(seed: number): Entry {
  const made = makeSheet({
    activity: 'find-the-same',
    step: 9,
    values: { content: 'colours' },
    seed,
    page: DEFAULT_PAGE,
    print: 'colour',
  });
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  const { code, tasks } = made.value;
  const decisionsOf = activityOf('find-the-same').decisions;
  return resultEntry(seed, 1, {
    code,
    day: addDays(START, 2 * (seed % DAYS)),
    tasks: tasks.map((task): TaskResult => {
      const [{ takenFor, options = [] } = {}] = decisionsOf(task);
      const isMixed = ({ colour }: Figure) =>
        [colour, takenFor?.colour].sort().join(' ') === 'orange red';
      const wrongs = options.filter(({ isRight }) => !isRight);
      const wrong =
        wrongs.find(({ figure }) => isMixed(figure)) ?? (seed % 5 === 0 ? wrongs[0] : undefined);
      return wrong?.mark === undefined
        ? { outcome: 'right' }
        : { outcome: 'not-yet', instead: [{ place: wrong.mark }] };
    }),
  });
}

/** A record whose code no version can read. */
export const UNREADABLE: Entry = resultEntry(2000, 1, { code: 'ZZZZ-ZZZZ', day: START });

/** Growth of the entries as it is on `TODAY`. */
export async function openGrowth(
  app: App,
  entries: readonly Entry[],
  options: OpenOptions = {},
): Promise<Page> {
  const page = await app.open('growth', { ...options, waitFor: 'child' });
  await page.clock.setFixedTime(new Date(`${TODAY}T09:00`));
  await putEntries(page, entries);
  await page.reload();
  await page.getByRole('heading', { name: /is getting on$/ }).waitFor();
  return page;
}
