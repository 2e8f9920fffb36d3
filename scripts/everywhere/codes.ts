// Sheet codes over every activity, content, step, paper, print and language, the same in each run.
import { ACTIVITY_IDS, activityOf } from '../../src/activities/index.ts';
import { LANGUAGES } from '../../src/languages/index.ts';
import { makeSheet } from '../../src/sheets/index.ts';
import type { Bundle } from './world.ts';

const CODES = 500;
const PAGES = [
  { paper: 'A4', orientation: 'portrait' },
  { paper: 'Letter', orientation: 'landscape' },
] as const;

export interface Spread {
  /** Each so manieth of the 500 codes; with no divisor in common with the number of activities it meets all of them. */
  readonly every: number;
  readonly sheetsOfBundle: number;
  readonly withAdultPages: boolean;
}

/** Bundles of the codes, the languages by turns. */
export function bundlesOfCodes({
  every,
  sheetsOfBundle,
  withAdultPages,
}: Spread): readonly Bundle[] {
  const codes = Array.from({ length: Math.ceil(CODES / every) }, (_, at) => codeAt(at * every));
  return Array.from({ length: Math.ceil(codes.length / sheetsOfBundle) }, (_, number) => ({
    language: LANGUAGES[number % LANGUAGES.length] ?? 'en',
    withAdultPages,
    codes: codes.slice(number * sheetsOfBundle, (number + 1) * sheetsOfBundle),
  }));
}

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
