// Where an outline has the most room inside, for a mark to stand.
import type { Figure } from './figure.ts';
import { outlineOf } from './outline.ts';
import { GRID, isSet, type Raster, rasterOf, WHOLE_CELL } from './raster.ts';

/** The largest circle inside the outline, in cell sides about the middle of the cell. */
export interface Room {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

const rooms = new Map<string, Room>();

/** The room inside a figure as printed; where several places are as roomy, the middle of them. */
export function roomIn(figure: Figure): Room {
  const key = JSON.stringify([
    figure.form,
    figure.turn,
    figure.mirrored,
    figure.size,
    figure.count,
    figure.layout,
    figure.dotSize,
  ]);
  const room = rooms.get(key) ?? measureRoom(figure);
  if (rooms.size > 2000) rooms.clear();
  rooms.set(key, room);
  return room;
}

interface Spot {
  readonly row: number;
  readonly column: number;
}

function measureRoom(figure: Figure): Room {
  const raster = rasterOf(outlineOf(figure), WHOLE_CELL);
  const spots = Array.from({ length: (GRID + 2) * (GRID + 2) }, (_, index) => ({
    row: Math.floor(index / (GRID + 2)) - 1,
    column: (index % (GRID + 2)) - 1,
  }));
  const inked = spots.filter((spot) => isSet(raster, spot.row, spot.column));
  const edge = spots.filter(
    (spot) => !isSet(raster, spot.row, spot.column) && touches(raster, spot),
  );
  const rooms = inked.map((spot) => ({ spot, radius: Math.sqrt(nearestSquare(spot, edge)) }));
  const most = rooms.reduce((best, { radius }) => Math.max(best, radius), 0);
  const roomiest = rooms.filter(({ radius }) => radius > most - 0.5).map(({ spot }) => spot);
  return {
    x: middleOf(roomiest.map(({ column }) => column)),
    y: middleOf(roomiest.map(({ row }) => row)),
    radius: (most - 0.5) / GRID,
  };
}

function touches(raster: Raster, { row, column }: Spot): boolean {
  return (
    isSet(raster, row - 1, column) ||
    isSet(raster, row + 1, column) ||
    isSet(raster, row, column - 1) ||
    isSet(raster, row, column + 1)
  );
}

function nearestSquare({ row, column }: Spot, others: readonly Spot[]): number {
  return others.reduce(
    (least, other) => Math.min(least, (other.row - row) ** 2 + (other.column - column) ** 2),
    GRID * GRID,
  );
}

/** The mean of cell numbers as a place in the cell. */
function middleOf(cells: readonly number[]): number {
  return (cells.reduce((sum, cell) => sum + cell, 0) / cells.length + 0.5) / GRID - 0.5;
}
