// The pages that the press is measured with: sheets of every activity in turn, each made when it is asked for.
import { ACTIVITY_IDS } from '../src/activities/index.ts';
import type { Page, Pages } from '../src/page/index.ts';
import { type FontFiles, writePdf } from '../src/press/index.ts';
import { makeSheet, sheetPage } from '../src/sheets/index.ts';

const STEP = 5;
const PAGE = { paper: 'A4', orientation: 'portrait' } as const;

export function* pagesToPress(count: number): Generator<Page> {
  for (let seed = 0; seed < count; seed++) {
    const activity = ACTIVITY_IDS[seed % ACTIVITY_IDS.length];
    if (activity === undefined) return;
    const spec = { activity, step: STEP, values: {}, seed, page: PAGE, print: 'colour' } as const;
    const sheet = makeSheet(spec);
    if (!sheet.ok) throw new Error(JSON.stringify(sheet.refusals));
    yield sheetPage(sheet.value);
  }
}

export async function pressed(
  pages: Iterable<Page>,
  fonts: FontFiles,
  write: (chunk: Uint8Array) => void,
): Promise<void> {
  const all: Pages = { title: 'Bench', language: 'en', pages };
  await writePdf(all, fonts, write);
}

/** Milliseconds that each of the rounds takes, the quickest first; one round before them does not count. */
export async function roundsOf(
  work: () => Promise<void>,
  rounds: number,
  clock: () => number,
): Promise<readonly number[]> {
  await work();
  const times: number[] = [];
  for (let round = 0; round < rounds; round++) {
    const start = clock();
    await work();
    times.push(clock() - start);
  }
  return times.sort((one, other) => one - other);
}
