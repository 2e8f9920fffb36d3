// What bending and stretching leave of a form: how many pieces it has and how many areas it encloses.
import type { FormId } from './form-names.ts';
import { outlineOf } from './outline.ts';
import { GRID, type Raster, rasterOf } from './raster.ts';

const topologies = new Map<FormId, string>();

/** How many pieces a form has and how many areas it encloses, such as `1 2` for B; the same however it lies. */
export function topologyOf(form: FormId): string {
  const known = topologies.get(form);
  if (known !== undefined) return known;
  const raster = rasterOf(outlineOf({ form, count: 1 }), { x: 0, y: 0, side: 1.1 });
  // The paper around the form is no area that it encloses.
  const topology = `${patchesOf(raster, true)} ${patchesOf(raster, false) - 1}`;
  topologies.set(form, topology);
  return topology;
}

/** How many patches of joined cells are inked, or blank. */
function patchesOf(raster: Raster, inked: boolean): number {
  const isWanted = (cell: number) => {
    const column = cell % GRID;
    const word = raster[2 * Math.floor(cell / GRID) + (column >> 5)] ?? 0;
    return ((word >>> (31 - (column & 31))) & 1) === (inked ? 1 : 0);
  };
  const left = new Set(Array.from({ length: GRID * GRID }, (_, cell) => cell).filter(isWanted));
  let patches = 0;
  for (const first of left) {
    patches += 1;
    const open = [first];
    left.delete(first);
    for (let cell = open.pop(); cell !== undefined; cell = open.pop()) {
      for (const next of neighboursOf(cell)) if (left.delete(next)) open.push(next);
    }
  }
  return patches;
}

function neighboursOf(cell: number): readonly number[] {
  const column = cell % GRID;
  return [
    ...(column > 0 ? [cell - 1] : []),
    ...(column < GRID - 1 ? [cell + 1] : []),
    cell - GRID,
    cell + GRID,
  ];
}
