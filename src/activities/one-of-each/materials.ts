// What to lay out for a grid: stickers counted by colour, crayons of all its colours, a pencil, or scissors and glue.
import { COLOUR_NAMES, type ColourName } from '../../palette/index.ts';
import type { Material } from '../activity.ts';
import type { Answer, Printed } from './task.ts';

export function materialsOf(
  { response = 'point', figures, stickerMm = 16 }: Printed,
  answer: Answer,
): readonly Material[] {
  if (response === 'sticker') {
    return counted(answer.figures.map(({ colour = 'black' }) => colour)).map(([colour, count]) => ({
      kind: 'sticker',
      colour,
      diameterMm: stickerMm,
      count,
    }));
  }
  if (response === 'cut') return [{ kind: 'scissors' }, { kind: 'glue' }];
  if (response !== 'draw' && response !== 'colour-in') return [];
  const colours = figures.flatMap(({ colour }) => (colour ? [colour] : []));
  const crayons = counted(colours).map(([colour]): Material => ({ kind: 'crayon', colour }));
  return crayons.length > 0 ? crayons : [{ kind: 'pencil' }];
}

/** Each colour with how often it comes, in the order of the colour names. */
function counted(colours: readonly ColourName[]): readonly (readonly [ColourName, number])[] {
  return COLOUR_NAMES.map(
    (name) => [name, colours.filter((colour) => colour === name).length] as const,
  ).filter(([, count]) => count > 0);
}
