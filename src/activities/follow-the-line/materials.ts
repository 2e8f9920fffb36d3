// What to lay out for a task: stickers or crayons in the colours of the starts, or a pencil to draw along with.
import type { ColourName } from '../../palette/index.ts';
import type { Material } from '../activity.ts';
import type { Printed } from './task.ts';

export function materialsOf({
  starts,
  colours,
  response = 'point',
  stickerMm = 16,
}: Printed): readonly Material[] {
  if (response === 'point') return [];
  const own = starts.flatMap(({ colour }) => (colour ? [colour] : []));
  const each = own.length > 0 ? own : (colours ?? []);
  if (each.length === 0) return [{ kind: 'pencil' }];
  return [...new Set(each)].map((colour) => materialIn(colour, response, stickerMm));
}

function materialIn(
  colour: ColourName,
  response: Printed['response'],
  diameterMm: number,
): Material {
  return response === 'sticker'
    ? { kind: 'sticker', colour, diameterMm, count: 1 }
    : { kind: 'crayon', colour };
}
