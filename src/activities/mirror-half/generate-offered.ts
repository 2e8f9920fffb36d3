// The halves to choose from: the mirror image, and others that are wrong in the wanted way.
import type { Random } from '../../base/index.ts';
import { type Figure, sameFigure } from '../../figures/index.ts';
import { mirrored } from './generate-kinds.ts';
import type { Cells, MirrorValues, Part } from './task.ts';

/** So many halves with moved elements are drawn for each that is needed; after that all are gone through. */
const DRAWS = 30;

/** The mirror image of a half in one line. */
export function mirrorImage({ rows, columns, cells }: Part, line: 'upright' | 'level'): Cells {
  return cells.map((_, place) => {
    const [row, column] = [Math.floor(place / columns), place % columns];
    const from =
      line === 'upright'
        ? row * columns + columns - 1 - column
        : (rows - 1 - row) * columns + column;
    const figure = cells[from];
    return figure ? imageOf(figure, line) : null;
  });
}

/** The figure as it is where the mirror changes nothing that is seen. */
function imageOf(figure: Figure, line: 'upright' | 'level'): Figure {
  const image = mirrored(figure, line);
  if (sameFigure(figure, image)) return figure;
  const { mirrored: isMirrored, ...turned } = image;
  const { mirrored: wasMirrored, ...rest } = figure;
  const plain = [0, 90, 180, 270].map((turn) => ({ ...rest, turn }));
  return plain.find((other) => sameFigure(other, image)) ?? { ...turned, mirrored: isMirrored };
}

/** `count` wrong halves, none of them the right one and no two alike. */
export function drawWrong(
  part: Part,
  right: Cells,
  { wrong, choices }: Pick<MirrorValues, 'wrong' | 'choices'>,
  random: Random,
): readonly Cells[] {
  const copied = part.cells;
  const turned = [...part.cells].reverse();
  const drawn: Cells[] = [];
  if (wrong === 'copied') drawn.push(copied);
  if (wrong === 'turned' || (wrong === 'copied' && choices > 2)) drawn.push(turned);
  const taken = [right, copied, turned];
  const elements = right.filter((figure) => figure !== null).length;
  const moves = wrong === 'far' ? Math.ceil(elements / 2) : 1;
  while (drawn.length < choices - 1) {
    const next = drawMoved(right, moves, [...taken, ...drawn], random);
    if (!next) throw new Error('mirror-half › choices: expected enough wrong halves, got fewer');
    drawn.push(next);
  }
  return drawn;
}

function drawMoved(
  right: Cells,
  moves: number,
  taken: readonly Cells[],
  random: Random,
): Cells | undefined {
  const isNew = (cells: Cells) => taken.every((other) => !areSame(cells, other));
  for (let draw = 0; draw < DRAWS; draw++) {
    const cells = withMoved(right, moves, random);
    if (isNew(cells)) return cells;
  }
  return random.shuffle(oneChanged(right)).find(isNew);
}

/** So many elements in other places or, where none is free, made into others of the half. */
function withMoved(right: Cells, moves: number, random: Random): Cells {
  const free = random.shuffle(placesOf(right, (figure) => figure === null));
  const filled = random.sample(
    placesOf(right, (figure) => figure !== null),
    moves,
  );
  const cells = [...right];
  for (const [index, from] of filled.entries()) {
    const to = free[index];
    const figure = right[from] ?? null;
    const others = kindsIn(right).filter((kind) => figure && !sameFigure(kind, figure));
    if (to !== undefined) [cells[to], cells[from]] = [figure, null];
    else if (others.length > 0) cells[from] = random.pick(others);
  }
  return cells;
}

/** Every half that differs in one element: in another place, or another one. */
function oneChanged(right: Cells): readonly Cells[] {
  const free = placesOf(right, (figure) => figure === null);
  return placesOf(right, (figure) => figure !== null).flatMap((from) => {
    const figure = right[from] ?? null;
    const moved = free.map((to) =>
      right.map((cell, place) => (place === to ? figure : place === from ? null : cell)),
    );
    const others = kindsIn(right).filter((kind) => figure && !sameFigure(kind, figure));
    const changed = others.map((kind) =>
      right.map((cell, place) => (place === from ? kind : cell)),
    );
    return [...moved, ...changed];
  });
}

function kindsIn(cells: Cells): readonly Figure[] {
  const kinds: Figure[] = [];
  for (const cell of cells) {
    if (cell && !kinds.some((kind) => sameFigure(kind, cell))) kinds.push(cell);
  }
  return kinds;
}

function placesOf(cells: Cells, isWanted: (cell: Figure | null) => boolean): readonly number[] {
  return cells.flatMap((cell, place) => (isWanted(cell) ? [place] : []));
}

function areSame(one: Cells, other: Cells): boolean {
  return one.every((cell, place) => {
    const beside = other[place] ?? null;
    return cell === beside || (cell !== null && beside !== null && sameFigure(cell, beside));
  });
}
