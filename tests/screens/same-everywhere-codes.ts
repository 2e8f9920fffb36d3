// Five hundred sheet codes over every activity, content, step, paper, print and language, the same in each run.
import { ACTIVITY_IDS, activityOf } from '../../src/activities/index.ts';
import { LANGUAGES } from '../../src/languages/index.ts';
import { makeSheet } from '../../src/sheets/index.ts';
import type { Bundle } from './same-everywhere-entry.ts';

const CODES = 500;
const SHEETS_OF_A_BUNDLE = 25;
const PAGES = [
  { paper: 'A4', orientation: 'portrait' },
  { paper: 'Letter', orientation: 'landscape' },
] as const;

/** One sheet's code; each turn of the activities takes the next step and the next content that fits. */
function codeAt(index: number): string {
  const activity = ACTIVITY_IDS[index % ACTIVITY_IDS.length] ?? 'by-key';
  const turn = Math.floor(index / ACTIVITY_IDS.length);
  const { ladder, parameters } = activityOf(activity);
  const { content } = parameters;
  const contents = content?.kind === 'choice' ? content.values : [];
  const one = contents[turn % Math.max(1, contents.length)];
  const asked = {
    activity,
    step: 1 + (turn % ladder.length),
    seed: (index * 2_654_435_761) % 2 ** 32,
    page: PAGES[turn % PAGES.length] ?? PAGES[0],
    print: turn % 3 === 2 ? 'grey' : 'colour',
    ...(turn % 5 === 4 ? { hand: 'left' as const } : {}),
  } as const;
  // What a step cannot take gives way: first the content, then the paper and the print; two tasks to the one that fits.
  const usual = { ...asked, page: PAGES[0], print: 'colour', values: {} } as const;
  const wished = one === undefined ? [] : [{ ...asked, values: { content: one } }];
  for (const request of [...wished, { ...asked, values: {} }, usual]) {
    for (const tasks of [2, 1]) {
      const made = makeSheet({ ...request, tasks });
      if (made.ok) return made.value.code;
    }
  }
  throw new Error(`${activity}, step ${asked.step}: no sheet`);
}

/** Bundles of all codes, the languages by turns. */
export function bundlesOfCodes(): readonly Bundle[] {
  const codes = Array.from({ length: CODES }, (_, index) => codeAt(index));
  return Array.from({ length: CODES / SHEETS_OF_A_BUNDLE }, (_, number) => ({
    language: LANGUAGES[number % LANGUAGES.length] ?? 'en',
    codes: codes.slice(number * SHEETS_OF_A_BUNDLE, (number + 1) * SHEETS_OF_A_BUNDLE),
  }));
}
