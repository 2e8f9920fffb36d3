// What to lay out for a table: crayons of its colours, a pencil, or scissors and glue.
import { COLOUR_NAMES } from '../../palette/index.ts';
import type { Material } from '../activity.ts';
import { type Answer, type Printed, responseTo } from './task.ts';

export function materialsOf(printed: Printed, { figures }: Answer): readonly Material[] {
  const response = responseTo(printed);
  if (response === 'join') return [{ kind: 'pencil' }];
  if (response === 'cut') return [{ kind: 'scissors' }, { kind: 'glue' }];
  if (response !== 'draw') return [];
  const { rowHeads = [], columnHeads = [], rows } = printed;
  const all = [...rowHeads, ...columnHeads, ...rows.flat(), ...figures];
  const used = COLOUR_NAMES.filter((name) => all.some((figure) => figure?.colour === name));
  return used.length > 0
    ? used.map((colour): Material => ({ kind: 'crayon', colour }))
    : [{ kind: 'pencil' }];
}
