// The steps of in-every-box: from two colours in three boxes up to three shared among six, one change at a time.
import type { Step } from '../activity.ts';
import { ladderOf, type Rung } from '../ladder.ts';
import type { BoxValues } from './task.ts';

const FIRST: BoxValues = {
  content: 'colours',
  response: 'point',
  boxes: 3,
  figures: 2,
  shared: 1,
  nearMisses: 0,
  layout: 'grid',
  stickerMm: '16',
};

/**
 * What each step changes. Order and ages: common practice, no source, but that more to compare and more
 * distractors like the target are harder (Duncan & Humphreys 1989, Psychol. Rev. 96(3) 433–458), and that
 * two- to five-year-olds come to see one to three, then up to five at a glance (Starkey & Cooper 1995,
 * Br. J. Dev. Psychol. 13(4) 399–420).
 */
const RUNGS: readonly Rung<BoxValues>[] = [
  { change: {}, age: 3, tasks: 4 },
  { change: { figures: 3 }, age: 3, tasks: 4 },
  { change: { nearMisses: 1 }, age: 3, tasks: 4 },
  { change: { boxes: 4 }, age: 4, tasks: 2 },
  { change: { shared: 2 }, age: 4, tasks: 2 },
  { change: { figures: 4 }, age: 4, tasks: 2 },
  { change: { response: 'ring' }, age: 4, tasks: 2 },
  { change: { boxes: 5 }, age: 4, tasks: 2 },
  { change: { figures: 5 }, age: 5, tasks: 1 },
  { change: { nearMisses: 2 }, age: 5, tasks: 1 },
  { change: { shared: 3 }, age: 5, tasks: 1 },
  { change: { boxes: 6 }, age: 5, tasks: 1 },
  { change: { layout: 'loose' }, age: 5, tasks: 1 },
  { change: { figures: 6 }, age: 5, tasks: 1 },
  { change: { nearMisses: 3 }, age: 5, tasks: 1 },
];

export const LADDER: readonly Step<BoxValues>[] = ladderOf(FIRST, RUNGS);
