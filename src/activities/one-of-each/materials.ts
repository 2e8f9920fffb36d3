// What to lay out for a grid: stickers counted by colour, counters, crayons of all its colours, a pencil, or scissors and glue.
import type { Material } from '../activity.ts';
import { countedColours } from '../colour-counts.ts';
import type { Answer, Printed } from './task.ts';

export function materialsOf(
  { response = 'point', figures, stickerMm = 16 }: Printed,
  answer: Answer,
): readonly Material[] {
  if (response === 'sticker') {
    return countedColours(answer.figures.map(({ colour = 'black' }) => colour)).map(
      ([colour, count]) => ({
        kind: 'sticker',
        colour,
        diameterMm: stickerMm,
        count,
      }),
    );
  }
  if (response === 'counters') return [{ kind: 'counters' }];
  if (response === 'cut') return [{ kind: 'scissors' }, { kind: 'glue' }];
  if (response !== 'draw' && response !== 'colour-in') return [];
  const colours = figures.flatMap(({ colour }) => (colour ? [colour] : []));
  const crayons = countedColours(colours).map(([colour]): Material => ({ kind: 'crayon', colour }));
  return crayons.length > 0 ? crayons : [{ kind: 'pencil' }];
}
