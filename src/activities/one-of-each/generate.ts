// Makes a grid with empty cells, the figures to use, and the key. Never fails for valid values.
import type { Random } from '../../base/index.ts';
import { attributesOf, drawSpace, type Figure, figureAt } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { drawSquare } from './squares.ts';
import type { Answer, Printed, SquareValues } from './task.ts';

export function generate(
  values: SquareValues,
  random: Random,
  style: PrintStyle,
): { readonly printed: Printed; readonly answer: Answer } {
  const { order, response } = values;
  const figures = drawFigures(values, random, style);
  const { full, isEmpty } = drawSquare(values, random);
  const placed = full.map((number) => figureOf(figures, number));
  const missing = placed.filter((_, cell) => isEmpty[cell]);
  const cells = placed.map((figure, cell) => (isEmpty[cell] ? null : figure));
  return {
    printed: {
      rows: figures.map((_, row) => cells.slice(row * order, (row + 1) * order)),
      figures,
      ...(values.boxes ? { boxes: true } : {}),
      response,
      ...(response === 'cut' ? { pieces: random.shuffle(missing) } : {}),
      ...(response === 'sticker' ? { stickerMm: Number(values.stickerMm) } : {}),
    },
    answer: { figures: missing },
  };
}

/** Where the content looks at several attributes, any two figures differ in all of them. */
function drawFigures(
  { content, order }: SquareValues,
  random: Random,
  style: PrintStyle,
): readonly Figure[] {
  const space = drawSpace(content, random, order, style);
  const attributes = attributesOf(content);
  return Array.from({ length: order }, (_, number) =>
    figureAt(
      space,
      attributes.map(() => number),
    ),
  );
}

function figureOf(figures: readonly Figure[], number: number): Figure {
  const figure = figures[number];
  if (!figure) throw new Error(`one-of-each › generate: no figure ${number}`);
  return figure;
}
