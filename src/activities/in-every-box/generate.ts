// Makes a task and its key: which figures, in which boxes, in which places. Never fails for valid values.
import type { Random } from '../../base/index.ts';
import type { Figure } from '../../figures/index.ts';
import type { PrintStyle } from '../../page/index.ts';
import { arrangeBoxes } from './arrangement.ts';
import { loosePitch, loosePlaces, STRAY_MM } from './box-shape.ts';
import { columnsOf } from './columns.ts';
import { drawFigures, poolSize } from './contents.ts';
import { measuresOf } from './measures.ts';
import { spreadShared } from './places.ts';
import type { Answer, Box, BoxValues, Place, Printed } from './task.ts';

export function generate(
  values: BoxValues,
  random: Random,
  style: PrintStyle,
): { readonly printed: Printed; readonly answer: Answer } {
  const arranged = arrangeBoxes(values, poolSize(values.content, style), random);
  const different = Math.max(...arranged.flat()) + 1;
  const figures = drawFigures(values.content, different, random, style);
  const unplaced = printedOf(
    arranged.map((box) => ({ figures: figuresOf(box, figures) })),
    values,
  );
  const columns = columnsOf(unplaced);
  const ordered = orderBoxes(arranged, columns, values, random);
  const boxes = ordered.map((box) => ({ figures: figuresOf(box, figures) }));
  const printed = { ...unplaced, boxes };
  return {
    printed: values.layout === 'loose' ? strew(printed, columns, ordered, values, random) : printed,
    answer: { figures: figures.slice(0, values.shared) },
  };
}

function figuresOf(box: readonly number[], figures: readonly Figure[]): readonly Figure[] {
  return box.map((number) => {
    const figure = figures[number];
    if (!figure) throw new Error(`in-every-box › generate: no figure ${number}`);
    return figure;
  });
}

/** Only what differs from what is taken for granted where it is absent. */
function printedOf(boxes: readonly Box[], values: BoxValues): Printed {
  return {
    boxes,
    layout: values.layout,
    response: values.response,
    ...(values.response === 'sticker' ? { circles: values.shared } : {}),
    ...(values.content === 'colours' ? { stickerMm: Number(values.stickerMm) } : {}),
  };
}

/** The figures of each box in an order in which no shared one keeps its place from box to box. */
function orderBoxes(
  arranged: readonly (readonly number[])[],
  columns: number,
  { boxes, figures, shared }: BoxValues,
  random: Random,
): readonly (readonly number[])[] {
  const spread = spreadShared(boxes, columns, figures, shared, random);
  return arranged.map((box, index) => {
    const places = spread[index] ?? [];
    const others = random.shuffle(box.filter((number) => number >= shared));
    return Array.from({ length: figures }, (_, place) => {
      const isShared = places.indexOf(place);
      return isShared >= 0 ? isShared : (others.pop() ?? 0);
    });
  });
}

/**
 * Strews the figures of each box over more places than there are figures, each a little astray. No shared
 * figure keeps its place here either.
 */
function strew(
  printed: Printed,
  columns: number,
  ordered: readonly (readonly number[])[],
  { boxes, figures, shared }: BoxValues,
  random: Random,
): Printed {
  const grid = loosePlaces(figures);
  const count = grid.columns * grid.rows;
  const spread = spreadShared(boxes, columns, count, shared, random);
  const strewn = printed.boxes.map((box, index) => {
    const taken = spread[index] ?? [];
    const free = random.shuffle(
      Array.from({ length: count }, (_, place) => place).filter((place) => !taken.includes(place)),
    );
    const numbers = ordered[index] ?? [];
    const places = numbers.map((number) => taken[number] ?? free.pop() ?? 0);
    return { ...box, places: places.map((place) => stray(place, grid.columns, printed, random)) };
  });
  return { ...printed, boxes: strewn };
}

/** A middle near that of a place, in tenths of a mm. */
function stray(place: number, columns: number, printed: Printed, random: Random): Place {
  const measures = measuresOf(printed);
  const pitch = loosePitch(measures);
  const middle = (index: number, pitchMm: number, strayMm: number) =>
    measures.gapMm / 2 + (index + 0.5) * pitchMm + random.int(-10 * strayMm, 10 * strayMm) / 10;
  const x = middle(place % columns, pitch.widthMm, STRAY_MM.across);
  const y = middle(Math.floor(place / columns), pitch.heightMm, STRAY_MM.down);
  return { x: Math.round(10 * x) / 10, y: Math.round(10 * y) / 10 };
}
