// About how many minutes a sheet takes, from what its tasks ask.
import type { Features } from '../activities/index.ts';

/** Laying out, saying the words, showing one: common practice, no source. */
const START_SECONDS = 60;
/** For each task, for each figure to look at, and for each thing to do: common practice, no source. */
const SECONDS = { task: 8, look: 2, deed: 3 } as const;
/** How much longer a thing takes for each level of the hand, in seconds: common practice, no source. */
const SECONDS_A_LEVEL = 2;
const SECONDS_A_MINUTE = 60;

/** Minutes to half a minute, at a usual pace; at least one. */
export function minutesFor(tasks: readonly Features[]): number {
  const seconds = tasks.reduce((sum, task) => sum + secondsFor(task), START_SECONDS);
  return Math.max(1, Math.round((2 * seconds) / SECONDS_A_MINUTE) / 2);
}

/** Features count things by their logarithm. */
function secondsFor({ compared = 0, answers = 0, places = 0, hand = 0 }: Features): number {
  const things = Math.max(Math.exp(answers), Math.exp(places) / 2);
  return (
    SECONDS.task +
    SECONDS.look * Math.exp(compared) +
    (SECONDS.deed + SECONDS_A_LEVEL * hand) * things
  );
}
