// The steps of follow-the-line: from two lines that never cross up to six in one ink with many crossings.
import type { Step } from '../activity.ts';
import { ladderOf, type Rung } from '../ladder.ts';
import type { LineValues } from './task.ts';

const FIRST: LineValues = {
  content: 'colours',
  response: 'point',
  lines: 2,
  crossings: 0,
  lineColours: 'own',
  direction: 'across',
  stickerMm: '16',
};

/** What each step changes; order and ages: common practice, no source. */
const RUNGS: readonly Rung<LineValues>[] = [
  { change: {}, age: 3, tasks: 3 },
  { change: { crossings: 1 }, age: 3, tasks: 3 },
  { change: { lines: 3 }, age: 3, tasks: 3 },
  { change: { crossings: 2 }, age: 3, tasks: 3 },
  { change: { lineColours: 'ink' }, age: 4, tasks: 3 },
  { change: { crossings: 4 }, age: 4, tasks: 3 },
  { change: { lines: 4 }, age: 4, tasks: 2 },
  { change: { crossings: 6 }, age: 4, tasks: 2 },
  { change: { lines: 5 }, age: 5, tasks: 2 },
  { change: { response: 'trace' }, age: 5, tasks: 2 },
  { change: { crossings: 8 }, age: 5, tasks: 2 },
  { change: { crossings: 10 }, age: 5, tasks: 2 },
  { change: { lines: 6 }, age: 5, tasks: 1 },
  { change: { crossings: 13 }, age: 5, tasks: 1 },
];

export const LADDER: readonly Step<LineValues>[] = ladderOf(FIRST, RUNGS);
