// The ladder: each rung changes one thing against the rung before it.
import type { AgeHint, Step } from '../activity.ts';
import { ladderOf } from '../ladder.ts';
import type { Parameters } from './parameters.ts';
import { STICKER_MM } from './task.ts';

const FIRST: Parameters = {
  content: 'shapes',
  response: 'sticker',
  entries: 2,
  items: 6,
  vary: 'none',
  balanced: true,
  leftRight: false,
  stickerMm: STICKER_MM,
};

/** What each rung changes, with the age that it is a first guess for. */
const CHANGES: readonly (readonly [AgeHint, Partial<Parameters>])[] = [
  [3, {}],
  [3, { response: 'colour-in' }],
  [3, { content: 'directions' }],
  [3, { items: 8 }],
  [4, { entries: 3 }],
  [4, { response: 'ring' }],
  [4, { items: 12 }],
  [4, { response: 'sign' }],
  [5, { content: 'shapes-and-colours' }],
  [5, { entries: 4 }],
  [5, { content: 'shapes-and-directions' }],
  [5, { items: 15 }],
  [5, { vary: 'size' }],
  [5, { entries: 5 }],
  [5, { items: 18 }],
  [5, { leftRight: true }],
  [5, { entries: 6 }],
  [5, { items: 21 }],
];

export const LADDER: readonly Step<Parameters>[] = ladderOf(
  FIRST,
  CHANGES.map(([age, change]) => ({ age, tasks: 1, change })),
);
