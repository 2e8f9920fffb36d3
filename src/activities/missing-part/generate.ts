// Makes a field with a hole, the pieces to choose from, and the key. Never fails for valid values.
import type { Random } from '../../base/index.ts';
import { figureAt, type Space } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { drawStock } from './generate-looks.ts';
import { type Look, wrongPieces } from './generate-pieces.ts';
import { COURSES, ruleOf } from './rules.ts';
import type { Answer, PartValues, Printed } from './task.ts';

/** Rows and columns of the hole. */
const HOLES = { one: [1, 1], two: [1, 2], four: [2, 2] } as const;

export function generate(
  values: PartValues,
  random: Random,
  style: PrintStyle,
): { readonly printed: Printed; readonly answer: Answer } {
  const { field, response, choices } = values;
  const space = drawStock(values.content, random, style);
  const looks = fieldLooks(values, space);
  const hole = drawHole(values, random);
  const right = hole.map((place) => looks[place] ?? []);
  const show = (look: Look) => figureAt(space, look);
  const wrong = wrongPieces(values, space, right, looks, random);
  const all = random.shuffle([right, ...wrong.slice(0, choices - 1)]);
  return {
    printed: {
      field: looks.map((look, place) => (hole.includes(place) ? null : show(look))),
      columns: field,
      ...(response === 'draw' ? {} : { offered: all.map((piece) => piece.map(show)) }),
      response,
    },
    answer: { figures: right.map(show) },
  };
}

/** The look in each place, row by row. */
function fieldLooks(values: PartValues, { axes }: Space): readonly Look[] {
  const courses = axes.map((_, axis) => COURSES[ruleOf(values, axis)]);
  return Array.from({ length: values.field ** 2 }, (_, place) => {
    const [row, column] = [Math.floor(place / values.field), place % values.field];
    return courses.map(({ at }) => at(row, column));
  });
}

/** The places that are missing, row by row: any that are together, each as often as any other. */
function drawHole({ field, hole }: PartValues, random: Random): readonly number[] {
  const [rows, columns] = HOLES[hole];
  const top = random.int(0, field - rows);
  const left = random.int(0, field - columns);
  return Array.from({ length: rows * columns }, (_, cell) => {
    const [row, column] = [Math.floor(cell / columns), cell % columns];
    return (top + row) * field + left + column;
  });
}
