// Makes a task: a model, boxes with a different part of it in each, and the finished boxes as the answer.
import type { Random } from '../../base/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { cellFigures } from './contents.ts';
import { choose, givenCount, waysToGive } from './givens.ts';
import { findPattern } from './models.ts';
import type { CopyValues } from './parameters.ts';
import { LINE_FIGURES, placesOf } from './places.ts';
import type { Answer, Box, Cells, Printed } from './task.ts';

export interface Made {
  readonly printed: Printed;
  readonly answer: Answer;
}

/** A task for values that the limits accept; for others a defect. */
export function generate(values: CopyValues, random: Random, style: PrintStyle): Made {
  const cells = drawModel(values, random, style);
  const { rows, columns, content, response } = values;
  const boxes = drawBoxes(cells, values, random);
  return {
    printed: {
      model: { rows, columns, cells },
      boxes,
      content,
      response,
      ...(response === 'sticker' ? { stickerMm: Number(values.stickerMm) } : {}),
    },
    answer: boxes.map(() => ({ cells })),
  };
}

function drawModel(values: CopyValues, random: Random, style: PrintStyle): Cells {
  const pattern = findPattern(values, random);
  if (!pattern)
    throw new Error('copy-pattern › generate: the limits let through what has no model');
  if (values.content === 'lines') {
    const figures = placesOf('lattice', values).map(({ kind }) =>
      kind === 'cell' ? null : LINE_FIGURES[kind],
    );
    return pattern.map((kind, place) => (kind === null ? null : (figures[place] ?? null)));
  }
  const figures = cellFigures(values, random, style);
  return pattern.map((kind) => (kind === null ? null : (figures[kind] ?? null)));
}

/** Boxes that each hold another part of the model, all parts of one size. */
function drawBoxes(cells: Cells, values: CopyValues, random: Random): readonly Box[] {
  const filled = cells.flatMap((cell, place) => (cell === null ? [] : [place]));
  const count = givenCount(values);
  if (count === 0) {
    return Array.from({ length: values.boxes }, () => ({ cells: cells.map(() => null) }));
  }
  const ranks = drawDifferent(values.boxes, waysToGive(values), random);
  return ranks.map((rank) => {
    const given = combinationOf(rank, filled, count);
    return { cells: cells.map((cell, place) => (given.includes(place) ? cell : null)) };
  });
}

/** `count` different whole numbers below `end` in random order, each drawn once (R. W. Floyd's method, from memory). */
function drawDifferent(count: number, end: number, random: Random): readonly number[] {
  const drawn = new Set<number>();
  for (let last = end - count; last < end; last++) {
    const number = random.int(0, last);
    drawn.add(drawn.has(number) ? last : number);
  }
  return random.shuffle([...drawn]);
}

/** The `count` of `items` that come at `rank`, from 0, when all such choices are listed in order. */
function combinationOf(rank: number, items: readonly number[], count: number): readonly number[] {
  const [first, ...others] = items;
  if (first === undefined || count === 0) return [];
  const withFirst = choose(others.length, count - 1);
  return rank < withFirst
    ? [first, ...combinationOf(rank, others, count - 1)]
    : combinationOf(rank - withFirst, others, count);
}
