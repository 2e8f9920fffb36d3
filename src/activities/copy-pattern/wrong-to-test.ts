// Tasks of copy-pattern that break a rule on purpose.
import { sameFigure } from '../../figures/index.ts';
import { anyOf, type Made, placesWhere, replaced, type WrongWays } from '../wrong-ways.ts';
import type { Answer, Box, Cells, Printed } from './task.ts';

type Task = Made<Printed, Answer>;

export const WRONG: WrongWays<Printed, Answer> = {
  'R5 the key leaves one place of a box empty': (task, random) =>
    withKey(task, random.int(0, task.answer.length - 1), (cells) => {
      const place = anyOf(random, filled(cells));
      return place === undefined ? undefined : replaced(cells, place, null);
    }),
  'R5 the key has one thing in another place': (task, random) =>
    withKey(task, random.int(0, task.answer.length - 1), (cells) => {
      const from = anyOf(random, filled(cells));
      const to = anyOf(random, empty(cells));
      if (from === undefined || to === undefined) return undefined;
      return replaced(replaced(cells, to, cells[from] ?? null), from, null);
    }),
  'R5 the key is the model turned upside down': (task) => {
    const { cells } = task.printed.model;
    const turned = [...cells].reverse();
    if (turned.every((figure, place) => isSame(figure, cells[place] ?? null))) return undefined;
    return { ...task, answer: task.answer.map(() => ({ cells: turned })) };
  },
  'R6 a box is begun where the model has nothing': (task, random) =>
    withBox(task, random.int(0, task.printed.boxes.length - 1), (cells) => {
      const { model } = task.printed;
      const figure = anyOf(random, filled(model.cells));
      const place = anyOf(random, empty(model.cells));
      if (figure === undefined || place === undefined) return undefined;
      return replaced(cells, place, model.cells[figure] ?? null);
    }),
  'R6 a box is begun with another thing than the model has': (task, random) =>
    withBox(task, random.int(0, task.printed.boxes.length - 1), (cells) => {
      const { model } = task.printed;
      if (model.cells.length !== model.rows * model.columns) return undefined;
      const place = random.pick(filled(model.cells));
      const others = model.cells.flatMap((figure) =>
        figure && !isSame(figure, model.cells[place] ?? null) ? [figure] : [],
      );
      const other = anyOf(random, others);
      return other && replaced(cells, place, other);
    }),
  'R7 a box is finished already': (task, random) =>
    withBox(task, random.int(0, task.printed.boxes.length - 1), () => task.printed.model.cells),
  'R3 the model is empty': (task) => {
    const nothing = (box: Box) => ({ ...box, cells: box.cells.map(() => null) });
    const { model, boxes } = task.printed;
    return {
      printed: {
        ...task.printed,
        model: { ...model, ...nothing(model) },
        boxes: boxes.map(nothing),
      },
      answer: task.answer.map(nothing),
    };
  },
  'R1 a box has a place less than the model': (task, random) =>
    withBox(task, random.int(0, task.printed.boxes.length - 1), (cells) => cells.slice(1)),
  'R8 two boxes are begun alike': ({ printed, answer }) => {
    const [first, second] = printed.boxes;
    if (!first || !second || filled(first.cells).length === 0) return undefined;
    return { printed: { ...printed, boxes: replaced(printed.boxes, 1, first) }, answer };
  },
};

function isSame(one: Cells[number], other: Cells[number]): boolean {
  return one && other ? sameFigure(one, other) : one === other;
}

function filled(cells: Cells): readonly number[] {
  return placesWhere(cells, (figure) => figure !== null);
}

function empty(cells: Cells): readonly number[] {
  return placesWhere(cells, (figure) => figure === null);
}

function withKey(
  task: Task,
  at: number,
  change: (cells: Cells) => Cells | undefined,
): Task | undefined {
  const answer = inBox(task.answer, at, change);
  return answer && { ...task, answer };
}

function withBox(
  task: Task,
  at: number,
  change: (cells: Cells) => Cells | undefined,
): Task | undefined {
  const boxes = inBox(task.printed.boxes, at, change);
  return boxes && { ...task, printed: { ...task.printed, boxes } };
}

function inBox(
  boxes: readonly Box[],
  at: number,
  change: (cells: Cells) => Cells | undefined,
): readonly Box[] | undefined {
  const cells = change(boxes[at]?.cells ?? []);
  return cells && replaced(boxes, at, { cells });
}
