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
  const left = new Uint8Array(GRID * GRID);
  for (let cell = 0; cell < left.length; cell++)
    left[cell] = isInked(raster, cell) === inked ? 1 : 0;
  let patches = 0;
  for (let first = left.indexOf(1); first !== -1; first = left.indexOf(1, first)) {
    patches += 1;
    clearPatch(left, first);
  }
  return patches;
}

function isInked(raster: Raster, cell: number): boolean {
  const word = raster[cell >> 5] ?? 0;
  return ((word >>> (31 - (cell & 31))) & 1) === 1;
}

/** Takes away the cell and all that are joined to it, cell by cell. */
function clearPatch(left: Uint8Array, first: number): void {
  const open = [first];
  left[first] = 0;
  for (let cell = open.pop(); cell !== undefined; cell = open.pop()) {
    const column = cell % GRID;
    const before = column > 0 ? cell - 1 : -1;
    const after = column < GRID - 1 ? cell + 1 : -1;
    for (const next of [before, after, cell - GRID, cell + GRID]) {
      if (left[next] !== 1) continue;
      left[next] = 0;
      open.push(next);
    }
  }
}
