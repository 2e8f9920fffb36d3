// What the adults of the invented setting write down now and then, each note at most once for a child. Its words are
// messages of the group.
import type { Random } from '../../src/base/index.ts';
import type { DemoNote } from '../../src/plan/demo/rows.ts';
import type { Mood } from '../../src/records/index.ts';

/** How a sheet went; `pair`: the two that a child mixes up were mixed up. */
export type Going = 'well' | 'middling' | 'hard' | 'pair';

const NOTES: Readonly<Record<Going, readonly DemoNote[]>> = {
  well: [
    'one-more',
    'hummed',
    'aloud',
    'showed-others',
    'looked-twice',
    'keep-sheet',
    'all-alone',
    'harder-to-come',
    'all-at-once',
    'blue-pencil',
    'sang-numbers',
    'funny-easy',
    'on-floor',
    'with-animals',
    'with-care',
    'helped-friend',
  ],
  middling: [
    'short-night',
    'on-step',
    'rain',
    'turned-sheet',
    'digger',
    'first-thing',
    'fingers',
    'last-alone',
    'birds',
    'new-chair',
    'grandma',
    'changed-answer',
  ],
  hard: ['stopped', 'end-together', 'pear', 'quicker', 'cold', 'radio', 'go-out'],
  pair: ['orange-for-red', 'red-orange-again', 'two-pencils', 'carrot', 'lamp'],
};

const MOODS: Readonly<Record<Going, readonly Mood[]>> = {
  well: ['glad', 'glad', 'calm'],
  middling: ['calm', 'calm', 'glad', 'restless'],
  hard: ['tired', 'restless', 'calm', 'tired', 'upset'],
  pair: ['calm', 'glad', 'restless'],
};

export type Notebook = (going: Going) => DemoNote | undefined;

/** Notes in their order from a share of each list on (0 to 1), round once; `undefined` when all of a kind are written. */
export function notebook(from: number): Notebook {
  const left = new Map<string, DemoNote[]>(
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
