// The steps of mirror-half: from two stickers beside an upright line to a quarter mirrored in both lines.
import type { Step } from '../activity.ts';
import { ladderOf, type Rung } from '../ladder.ts';
import type { MirrorValues } from './task.ts';

const FIRST: MirrorValues = {
  content: 'colours',
  response: 'sticker',
  axis: 'upright',
  deep: 2,
  along: 2,
  elements: 2,
  kinds: 1,
  given: 'first',
  choices: 2,
  wrong: 'far',
  stickerMm: '16',
};

/**
 * What each step changes. Ages: common practice, no source. The upright line comes before the level one, since
 * left-right symmetry is seen sooner than up-down symmetry (Bornstein, Ferdinandsen & Gross 1981, Dev. Psychol.
 * 17, 82–86, from memory). No step has the child tell a half from its own mirror image, or mirrors a direction.
 */
const RUNGS: readonly Rung<MirrorValues>[] = [
  { change: {}, age: 3, tasks: 4 },
  { change: { kinds: 2 }, age: 3, tasks: 4 },
  { change: { along: 3 }, age: 3, tasks: 3 },
  { change: { elements: 3 }, age: 3, tasks: 3 },
  { change: { deep: 3 }, age: 4, tasks: 2 },
  { change: { elements: 4 }, age: 4, tasks: 2 },
  { change: { response: 'colour-in' }, age: 4, tasks: 2 },
  { change: { kinds: 3 }, age: 4, tasks: 2 },
  { change: { axis: 'level' }, age: 4, tasks: 2 },
  { change: { elements: 6 }, age: 5, tasks: 2 },
  { change: { along: 4 }, age: 5, tasks: 2 },
  { change: { content: 'shapes', response: 'draw' }, age: 5, tasks: 1 },
  { change: { axis: 'both' }, age: 5, tasks: 1 },
  { change: { elements: 8 }, age: 5, tasks: 1 },
];

export const LADDER: readonly Step<MirrorValues>[] = ladderOf(FIRST, RUNGS);
