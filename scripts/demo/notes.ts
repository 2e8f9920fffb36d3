// What the adults of the invented setting write down now and then, each note at most once for a child.
import type { Random } from '../../src/base/index.ts';
import type { Mood } from '../../src/records/index.ts';

/** How a sheet went; `pair`: the two that a child mixes up were mixed up. */
export type Going = 'well' | 'middling' | 'hard' | 'pair';

const NOTES: Readonly<Record<Going, readonly string[]>> = {
  well: [
    'wanted to do one more',
    'hummed all the way through',
    'said every one aloud before touching it',
    'showed the others how it goes',
    'looked twice, then was sure',
    'asked to keep the sheet',
    'all alone while I set the table',
    'told me there would be a harder one',
    'quite still, and then all of them at once',
    'with the blue pencil, as always',
    'sang the numbers while doing it',
    'found it funny how easy this one was',
    'did it on the floor',
    'wants the same one with animals',
    'slowly and with care',
    'helped a friend with theirs afterwards',
  ],
  middling: [
    'after a short night',
    'on the step outside, in the sun',
    'with rain on the roof',
    'turned the sheet round and round first',
    'a digger went past in the middle',
    'first thing in the morning',
    'counted on the fingers',
    'found the last one alone',
    'one eye on the birds outside',
    'new chair, much better for the feet',
    'talked about grandma all the time',
    'changed an answer, and was right to',
  ],
  hard: [
    'stopped halfway, and that was fine',
    'we did the end of it together',
    'hungry, better after a pear',
    'quicker than the eyes today',
    'just back from a cold',
    'another time without the radio',
    'rather wanted to go out',
  ],
  pair: [
    'took the orange one for the red',
    'red and orange again',
    'held the two pencils side by side, then saw it',
    'asked which of them is the carrot',
    'by the lamp; try it in daylight',
  ],
};

const MOODS: Readonly<Record<Going, readonly Mood[]>> = {
  well: ['glad', 'glad', 'calm'],
  middling: ['calm', 'calm', 'glad', 'restless'],
  hard: ['tired', 'restless', 'calm', 'tired', 'upset'],
  pair: ['calm', 'glad', 'restless'],
};

export type Notebook = (going: Going) => string | undefined;

/** Notes in their order from a share of each list on (0 to 1), round once; `undefined` when all of a kind are written. */
export function notebook(from: number): Notebook {
  const left = new Map<string, string[]>(
    Object.entries(NOTES).map(([kind, notes]) => {
      const start = Math.floor(from * notes.length);
      return [kind, [...notes.slice(start), ...notes.slice(0, start)]];
    }),
  );
  return (going) => left.get(going)?.shift();
}

export function moodFor(going: Going, random: Random): Mood {
  return random.pick(MOODS[going]);
}
