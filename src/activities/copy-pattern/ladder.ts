// The steps of copy-pattern, each of which changes one thing against the step before.
import type { Step } from '../activity.ts';
import { ladderOf, type Rung } from '../ladder.ts';
import type { CopyValues } from './parameters.ts';

const START: CopyValues = {
  content: 'colours',
  response: 'sticker',
  rows: 2,
  columns: 2,
  elements: 2,
  kinds: 1,
  boxes: 1,
  givens: 'none',
  symmetry: 'any',
  joined: true,
  slanted: false,
  stickerMm: '16',
};

/**
 * What changes at each rung; where the content changes, its response and its single ink change with it,
 * because no other goes with the new content. Order and ages: common practice, no source, but for stickers
 * before filling before lines, and slants last (copying oblique strokes comes late: Gesell tradition; at
 * four, children confuse slopes more than anything else: Corballis & Zalik 1977, J. Exp. Child Psychol. 24).
 */
const RUNGS: readonly Rung<CopyValues>[] = [
  { change: {}, age: 3, tasks: 4 },
  { change: { boxes: 2 }, age: 3, tasks: 3 },
  { change: { kinds: 2 }, age: 3, tasks: 3 },
  { change: { elements: 3 }, age: 3, tasks: 3 },
  { change: { rows: 3 }, age: 3, tasks: 2 },
  { change: { columns: 3 }, age: 4, tasks: 1 },
  { change: { elements: 4 }, age: 4, tasks: 1 },
  { change: { symmetry: 'none' }, age: 4, tasks: 1 },
  { change: { content: 'filled-cells', response: 'colour-in' }, age: 4, tasks: 2 },
  { change: { givens: 'some' }, age: 4, tasks: 3 },
  { change: { kinds: 3 }, age: 4, tasks: 3 },
  { change: { elements: 5 }, age: 5, tasks: 3 },
  { change: { content: 'lines', response: 'draw-line', kinds: 1 }, age: 5, tasks: 3 },
  { change: { slanted: true }, age: 5, tasks: 3 },
  { change: { columns: 4 }, age: 5, tasks: 2 },
  { change: { elements: 6 }, age: 5, tasks: 2 },
  { change: { joined: false }, age: 5, tasks: 2 },
];

export const LADDER: readonly Step<CopyValues>[] = ladderOf(START, RUNGS);
